namespace Kitwright.Exchange.Workbooks;

/// <summary>A part unpacks to more than its limit; never leaves the reading of a workbook.</summary>
internal sealed class PartTooBigException(string part) : IOException($"{part} unpacks to too much.");
