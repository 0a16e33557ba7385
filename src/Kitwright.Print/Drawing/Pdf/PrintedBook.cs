using System.Collections.Immutable;

namespace Kitwright.Print.Drawing.Pdf;

/// <summary>Pages ready to be written.</summary>
/// <param name="Language">BCP 47, such as "en-US".</param>
public sealed record PrintedBook(
    string Title,
    string Language,
    PageSize Size,
    ImmutableArray<Node> Pages,
    ImmutableArray<Bookmark> Bookmarks
);

/// <summary>In points.</summary>
public readonly record struct PageSize(double Width, double Height);

/// <summary>A line of the reader's table of contents.</summary>
/// <param name="Page">From 0.</param>
public sealed record Bookmark(string Title, int Page);
