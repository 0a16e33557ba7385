namespace Kitwright.Plans;

/// <summary>
/// The path of one item, such as <c>block/star/patch/7</c>, <c>piece/A3</c>, <c>cloth/A/strip/3/cut/2</c> or
/// <c>step/12</c>. Screen, drawings and print carry it; links between views rest on it.
/// </summary>
/// <remarks>Ordinal equality. <c>default</c> is the empty path, which names nothing.</remarks>
public readonly record struct PathId(string? Path)
{
    public string Value => Path ?? "";

    public PathId Child(string kind, object key) =>
        new(Value.Length == 0 ? $"{kind}/{key}" : $"{Value}/{kind}/{key}");

    public bool Equals(PathId other) => string.Equals(Value, other.Value, StringComparison.Ordinal);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Value);

    public override string ToString() => Value;
}
