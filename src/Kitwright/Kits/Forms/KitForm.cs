namespace Kitwright.Kits.Forms;

/// <summary>How far the shop cuts a kit.</summary>
public enum KitForm
{
    /// <summary>Lengths, which the customer cuts.</summary>
    Yardage,

    /// <summary>Strips across the width, which the customer sub-cuts.</summary>
    StripCut,

    /// <summary>Every piece, ready to sew.</summary>
    FullyCut,
}
