using System.Collections.Immutable;
using System.CommandLine;
using Kitwright.Blocks;
using Kitwright.Findings;
using Kitwright.Measure;
using Kitwright.Piecing;
using Kitwright.Print.Drawing;
using Kitwright.Print.Pictures;
using Kitwright.Quilts;
using Kitwright.Settings;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary><c>sets BLOCK</c>: how many different settings a block has, and what they look like.</summary>
internal static class SetsCommand
{
    private const int MostDrawn = 400;
    private static readonly int[] Sides = [2, 3, 4];

    public static Command Make()
    {
        var id = new Argument<string>("BLOCK") { Description = Inputs.Say("command.sets.block") };
        var repeat = new Option<int>("--repeat") { Description = Inputs.Say("command.sets.repeat"), DefaultValueFactory = _ => Sides[0] };
        repeat.AcceptOnlyFromAmong([.. Sides.Select(n => $"{n}")]);
        var mirrored = new Option<bool>("--mirrored") { Description = Inputs.Say("command.sets.mirrored") };
        var symmetric = new Option<bool>("--symmetric") { Description = Inputs.Say("command.sets.symmetric") };
        var json = Inputs.Json();
        var files = new PictureFiles();
        var command = new Command("sets", Inputs.Say("command.sets")) { id, repeat, mirrored, symmetric, json };
        files.AddTo(command, needed: false);
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            var found = Read(parsed.GetValue(id)!);
            if (found.Value is not { } book)
            {
                return Tell(output, parsed.GetValue(json), null, found.Findings, Inputs.Language(parsed));
            }

            var block = book.At(Length.Inches(book.Grid.Columns));
            var looks = Looks.Of(BlockSymmetry.Of(block), parsed.GetValue(mirrored));
            var findings = found.Findings;
            if (files.Wanted(parsed))
            {
                var drawn = Drawn(new(parsed.GetValue(repeat), looks), parsed.GetValue(symmetric));
                var file = SettingSheet.Of(block, drawn, looks, Fill(book), Inputs.Say("picture.settings", ("block", book.Name), ("count", drawn.Length)));
                findings = [.. findings, .. files.Write(parsed, parsed.GetValue(json) ? TextWriter.Null : output, file)];
            }

            return Tell(output, parsed.GetValue(json), Counted(book, parsed.GetValue(mirrored)), findings, Inputs.Language(parsed));
        });
        return command;
    }

    /// <summary>What the command answers.</summary>
    /// <param name="Symmetry">Order of the block's own group: 1 for a block that every turn and mirror changes.</param>
    /// <param name="Looks">Different ways to lie in a cell.</param>
    internal sealed record Answer(string Block, int Symmetry, int Looks, ImmutableArray<RepeatAnswer> Repeats);

    /// <param name="Different">Settings that are not made equal by shifts, turns and allowed mirrors.</param>
    /// <param name="Symmetric">Those of them that keep every turn and mirror about a center.</param>
    internal sealed record RepeatAnswer(int Side, long Different, int Symmetric);

    /// <summary>The counts of a square block of the book.</summary>
    public static Answer Counted(BookBlock book, bool mirrored)
    {
        var symmetry = BlockSymmetry.Of(book.At(Length.Inches(book.Grid.Columns)));
        var looks = Looks.Of(symmetry, mirrored);
        return new(book.Id, symmetry.Length, looks.Count, [.. Sides.Select(side => Count(new(side, looks)))]);
    }

    private static RepeatAnswer Count(RepeatGroup group) =>
        new(group.Side, (long)BurnsideCount.Of(group), Arrangements.Symmetric(group).Length);

    /// <summary>A block of the book by its id, or a block file.</summary>
    private static Checked<BookBlock> Read(string text)
    {
        if (BlockBook.Find(text) is { } found)
        {
            return OnlySquare(Checked<BookBlock>.Of(found));
        }

        if (!text.EndsWith(".json", StringComparison.OrdinalIgnoreCase))
        {
            return Checked<BookBlock>.Failed(Finding.Of("blocks.unknown", "BLOCK", ("id", text)));
        }

        var bytes = InputFile.Read(text);
        return bytes.Value is null ? Checked<BookBlock>.Failed(bytes.Findings) : OnlySquare(BlockFile.Read(Inputs.Text(bytes.Value)));
    }

    private static Checked<BookBlock> OnlySquare(Checked<BookBlock> read) =>
        read.Value is { } block && block.Grid.Columns != block.Grid.Rows
            ? Checked<BookBlock>.Failed(Finding.Of("sets.oblong", "BLOCK", ("block", block.Name)))
            : read;

    // What cannot be listed, or would not be seen for its number, is drawn by its symmetric ones.
    private static ImmutableArray<Arrangement> Drawn(RepeatGroup group, bool symmetric) =>
        symmetric || !Arrangements.CanBeListed(group) || BurnsideCount.Of(group) > MostDrawn
            ? [.. Arrangements.Symmetric(group).Take(MostDrawn)]
            : Arrangements.All(group);

    private static Func<string, Paint> Fill(BookBlock book)
    {
        var roles = book.Roles.ToDictionary(role => role.Id, role => Paint.Of(Color.Parse(PlainColors.Of(role))));
        return role => roles[role];
    }

    private static int Tell(TextWriter output, bool json, Answer? answer, ImmutableArray<Finding> findings, Catalog words)
    {
        if (json)
        {
            Report.WriteJson(output, new { sets = answer, findings = Report.Json(findings) });
            return Report.ExitFor(findings);
        }

        if (answer is not null)
        {
            output.WriteLine(words.Say("sets.block", ("block", answer.Block), ("symmetry", answer.Symmetry), ("looks", answer.Looks)));
            foreach (var repeat in answer.Repeats)
            {
                output.WriteLine(words.Say("sets.repeat", ("side", repeat.Side), ("different", repeat.Different), ("symmetric", repeat.Symmetric)));
            }
        }

        Report.Write(output, findings, words);
        return Report.ExitFor(findings);
    }
}
