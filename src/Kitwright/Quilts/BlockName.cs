namespace Kitwright.Quilts;

/// <summary>A block's name as it stands before the word "block" in a sentence: some names end with it themselves.</summary>
public static class BlockName
{
    private const string Word = " block";

    public static string BeforeBlock(string name) =>
        name.Length > Word.Length && name.EndsWith(Word, StringComparison.OrdinalIgnoreCase) ? name[..^Word.Length] : name;
}
