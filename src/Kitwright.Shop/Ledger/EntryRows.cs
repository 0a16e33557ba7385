using Kitwright.Measure;
using Kitwright.Shop.Rows;

namespace Kitwright.Shop.Ledger;

internal static class EntryRows
{
    public static StockEntry Read(EntryRow entry, BookingRow booking) =>
        new(entry.Id, entry.Booking, entry.Bolt, entry.Kind, Length.Ticks(entry.Ticks), entry.For, booking.By, booking.At);
}
