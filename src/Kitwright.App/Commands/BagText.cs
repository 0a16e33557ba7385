using System.CommandLine.Parsing;
using Kitwright.App.Planning;
using Kitwright.Kits.Forms;
using Kitwright.Words;

namespace Kitwright.App.Commands;

/// <summary>A kit in one of its forms as text for the terminal: what the shop cuts, the bag holds and the customer cuts.</summary>
internal static class BagText
{
    public static void Write(TextWriter output, KitBag bag, Catalog words)
    {
        foreach (var fabric in bag.Fabrics)
        {
            output.WriteLine();
            output.WriteLine($"{words.Say("web.pull.letter", ("letter", fabric.Letter))}: {words.Say(fabric.FromBolt)}");
            Lines("form.holds", fabric.Holds);
            Lines("form.shop", fabric.ShopCuts);
            Lines("form.customer", fabric.CustomerCuts.IsEmpty ? [Message.Of("form.nothing")] : fabric.CustomerCuts);
        }

        void Lines(string title, IEnumerable<Message> lines)
        {
            output.WriteLine($"  {words.Say(title)}:");
            foreach (var line in lines)
            {
                output.WriteLine("    " + words.Say(line));
            }
        }
    }

    /// <summary>"strip-cut" as people type it.</summary>
    public static KitForm? FormOf(ArgumentResult result)
    {
        if (BagPrint.FormOf(result.Tokens[0].Value) is { } form)
        {
            return form;
        }

        result.AddError(Inputs.Say("command.form"));
        return null;
    }
}
