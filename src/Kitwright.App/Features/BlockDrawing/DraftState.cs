using System.Collections.Immutable;

namespace Kitwright.App.Features.BlockDrawing;

/// <summary>Where a drawing stands: what was before, and what was undone.</summary>
/// <param name="Number">Entries of its log so far; two tabs that show one number show one drawing.</param>
public sealed record DraftState(int Number, ImmutableStack<string> Past, ImmutableStack<string> Undone)
{
    public static DraftState None { get; } = new(0, [], []);

    public string Document => Past.Peek();

    public bool CanUndo => !Past.IsEmpty && !Past.Pop().IsEmpty;

    public bool CanRedo => !Undone.IsEmpty;

    public DraftState After(DraftLog.Entry entry) =>
        entry switch
        {
            { Do: "undo" } when CanUndo => new(Number + 1, Past.Pop(), Undone.Push(Past.Peek())),
            { Do: "redo" } when CanRedo => new(Number + 1, Past.Push(Undone.Peek()), Undone.Pop()),
            { Do: "edit", Document: { } document } => new(Number + 1, Past.Push(document), []),
            _ => this with { Number = Number + 1 },
        };
}
