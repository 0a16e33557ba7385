using System.Collections.Immutable;
using Kitwright.Cutting.Sheets;
using Kitwright.Optimise.Cutting;

namespace Kitwright.Optimise.Sheets;

/// <summary>
/// A dive: the whole parts of the linear program's solution are cut, what is left is priced again, and where no whole
/// part is left the largest fraction is rounded up.
/// </summary>
/// <remarks>C. Joncour, S. Michel, R. Sadykov, D. Sverdlov and F. Vanderbeck, "Column generation based primal heuristics", 2010.</remarks>
internal sealed class SheetDive(SheetGrid grid, SheetColumnGenerator generator, WorkMeter meter)
{
    /// <param name="complete">Offers what is cut so far and what is left, once the first whole parts are cut.</param>
    public ImmutableArray<CutSheets>? Run(Action<ImmutableArray<CutSheets>, int[], int[]> complete)
    {
        int[] left = [.. grid.Counts];
        int[] sheets = [.. grid.Sheets.Select(sheet => sheet.Count ?? int.MaxValue)];
        var cut = ImmutableArray.CreateBuilder<CutSheets>();
        var completed = false;
        while (left.Any(count => count > 0))
        {
            if (meter.MustStop || !generator.Solve(left, sheets, mostRounds: cut.Count == 0 ? 1 : 20))
            {
                return null;
            }

            var before = cut.Count;
            var values = Enumerable.Range(0, generator.Columns.Count).Select(c => (Column: generator.Columns[c], Times: generator.Times(c))).Where(c => c.Times > 1e-6).ToList();
            foreach (var (column, times) in values.Where(c => c.Times >= 1 - 1e-6).OrderByDescending(c => c.Times))
            {
                Take(column, (int)Math.Min(Math.Floor(times + 1e-6), sheets[column.Sheet]), properly: true);
            }

            if (cut.Count == before)
            {
                if (!completed)
                {
                    completed = true;
                    complete(cut.ToImmutable(), left, sheets);
                }

                var next = values.Where(c => sheets[c.Column.Sheet] > 0).OrderByDescending(c => Math.Round(c.Times, 6)).Select(c => c.Column).FirstOrDefault();
                if (next is null)
                {
                    break;
                }

                Take(next, 1, properly: false);
            }
        }

        return cut.ToImmutable();

        void Take(SheetColumn column, int most, bool properly)
        {
            var times = properly ? Math.Min(most, column.MostTimes(left)) : 1;
            if (times == 0)
            {
                return;
            }

            for (var i = 0; i < column.Pieces.Length; i++)
            {
                left[column.Pieces[i]] = Math.Max(0, left[column.Pieces[i]] - (times * column.Copies[i]));
            }

            sheets[column.Sheet] -= times;
            cut.Add(new(column.Pattern, times));
        }
    }
}
