namespace Kitwright.Print.Drawing;

/// <summary>What a part of a drawing is to somebody who hears it read.</summary>
public abstract record Role
{
    public static Role Paragraph { get; } = new ParagraphRole();
    public static Role Table { get; } = new TableRole();
    public static Role TableRow { get; } = new TableRowRole();
    public static Role HeaderCell { get; } = new HeaderCellRole();
    public static Role Cell { get; } = new CellRole();

    /// <summary>Nothing that a reader misses: rules, page numbers, backgrounds.</summary>
    public static Role Decoration { get; } = new DecorationRole();

    public static Role Heading(int level) => new HeadingRole(level);

    /// <param name="alternative">What the picture says, in words.</param>
    public static Role Figure(string alternative) => new FigureRole(alternative);
}

public sealed record HeadingRole(int Level) : Role;

public sealed record ParagraphRole : Role;

public sealed record TableRole : Role;

public sealed record TableRowRole : Role;

public sealed record HeaderCellRole : Role;

public sealed record CellRole : Role;

public sealed record FigureRole(string Alternative) : Role;

public sealed record DecorationRole : Role;
