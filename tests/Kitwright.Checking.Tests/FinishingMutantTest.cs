using System.Collections.Immutable;
using Kitwright.Checking.Tests.Samples;
using Kitwright.Measure;
using Kitwright.Plans;
using Xunit;
using static Kitwright.Checking.Tests.Samples.Edits;

namespace Kitwright.Checking.Tests;

/// <summary>Binding, backing, fabrics and needs that go wrong in one place are refused, and for the right reason.</summary>
public sealed class FinishingMutantTest
{
    public static Mutants Wrong { get; } = new()
    {
        { "perimeter of another top", "check.binding.perimeter", p => p with { Binding = p.Binding with { Perimeter = p.Binding.Perimeter + Step } } },
        { "a binding strip too few", "check.binding.short", p => p with { Binding = p.Binding with { Strips = 1 } } },
        { "a binding strip too many", "check.binding.over", p => p with { Binding = p.Binding with { Strips = 3 } } },
        { "allowance that the joins eat", "check.binding.short", p => p with { Binding = p.Binding with { Allowance = Length.Inches(22) } } },
        { "binding of another width", "check.binding.strip", p => p with { Binding = p.Binding with { StripWidth = Length.Inches(2, 1, 4) } } },
        { "binding of an unknown piece", "check.binding.piece", p => p with { Binding = p.Binding with { Piece = new("piece/Z1") } } },
        { "overhang on one side only", "check.backing.size", p => p with { Backing = p.Backing with { Width = p.Backing.Width - p.Backing.Overhang } } },
        { "panel too short", "check.backing.panel-length", p => p with { Backing = p.Backing with { PanelLength = p.Backing.PanelLength - Step } } },
        { "cloth too narrow for the panels", "check.backing.panels", p => p with { Backing = p.Backing with { UsableWidth = Length.Inches(20) } } },
        { "no panel", "check.backing.panels", p => p with { Backing = p.Backing with { Panels = 0 } } },
        { "a panel too many", "check.backing.panels-over", p => p with { Backing = p.Backing with { Panels = 2 } } },
        { "backing bought a step too little", "check.backing.purchase", p => p with { Backing = p.Backing with { Purchase = p.Backing.Purchase - Length.Yards(new(1, 8)) } } },
        { "seams the other way", "check.backing.panel-length", p => p with { Backing = p.Backing with { Across = true } } },
        { "batting of the top's size", "check.batting.size", p => p with { Needs = p.Needs with { Batting = new(p.Design.Width, p.Design.Height) } } },
        { "need that is not the purchase", "check.needs.length", p => p with { Needs = p.Needs with { Lengths = p.Needs.Lengths.Edit(n => n.Letter == "A", n => n with { Length = n.Length + Step }) } } },
        { "need of another fabric", "check.needs.fabric", p => p with { Needs = p.Needs with { Lengths = p.Needs.Lengths.Edit(n => n.Letter == "A", n => n with { Fabric = null }) } } },
        { "need left out", "check.needs.missing", p => p with { Needs = p.Needs with { Lengths = p.Needs.Lengths.RemoveAt(0) } } },
        { "backing left out of the needs", "check.needs.missing", p => p with { Needs = p.Needs with { Lengths = p.Needs.Lengths.RemoveAt(3) } } },
        { "need that nothing asks for", "check.needs.extra", p => p with { Needs = p.Needs with { Lengths = p.Needs.Lengths.Add(p.Needs.Lengths[0]) } } },
        { "role with two fabrics", "check.fabric.role-twice", p => p with { Fabrics = p.Fabrics.Edit(f => f.Letter == "B", f => f with { Roles = ["goose", "sky"] }) } },
        { "role without a fabric", "check.fabric.role-missing", p => p with { Fabrics = p.Fabrics.Edit(f => f.Letter == "B", f => f with { Roles = [] }) } },
        { "cloth of another fabric than its letter", "check.fabric.letter", p => p.EditCloth("A", c => c with { Fabric = "stock-B" }) },
        { "label with another fabric's letter", "check.fabric.label", p => p.EditPiece("A1", x => x with { Label = "B7" }) },
        { "label twice", "check.plan.label-twice", p => p.EditPiece("A1", x => x with { Label = "A2" }) },
        { "letter twice", "check.plan.letter-twice", p => p with { Fabrics = p.Fabrics.Edit(f => f.Letter == "B", f => f with { Letter = "A" }) } },
        { "id twice", "check.plan.id-twice", p => p with { Pieces = p.Pieces.Add(p.Pieces[0]) } },
        { "ruler without steps", "check.plan.steps", p => p with { RulerStep = Length.Zero } },
        { "number beyond any cloth", "check.plan.number", p => p with { Seam = Length.Inches(2_000_000) } },
        { "list left out of the file", "check.plan.missing", p => p with { Pieces = default } },
        { "name left out of the file", "check.plan.missing", p => p.EditPiece("A1", x => x with { Role = null! }) },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void A_wrong_plan_is_refused(string name) => Wrong.MustBeRefused(name);
}
