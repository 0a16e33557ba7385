using System.Collections.Concurrent;
using System.Text;
using System.Text.Json;

namespace Kitwright.App.Features.BlockDrawing;

/// <summary>
/// Unfinished drawings, each a log of what was done, beside the shop's database. Every edit is on disk before it is
/// shown, so that neither a reload nor a crash loses one; undo and redo are entries of the log too and have no end.
/// </summary>
public sealed class DraftLog(string folder)
{
    private readonly ConcurrentDictionary<string, object> locks = new(StringComparer.Ordinal);

    // What the logs come to: this process alone writes them, so that each is read once.
    private readonly ConcurrentDictionary<string, DraftState> known = new(StringComparer.Ordinal);

    /// <summary>The drawing as it stands; begun with a document where there is none.</summary>
    /// <param name="key">Letters, digits, hyphens, underscores and dots.</param>
    public DraftState Open(string key, Func<string> begin)
    {
        lock (LockOf(key))
        {
            return Read(key) ?? Add(key, null, new("edit", begin()));
        }
    }

    /// <summary>
    /// Adds a document. Where another tab has added something meanwhile, the new one comes after it: nothing is lost,
    /// and undo leads back to what the other tab had.
    /// </summary>
    public DraftState Edit(string key, string document) => Change(key, new("edit", document));

    public DraftState Undo(string key) => Change(key, new("undo", null));

    public DraftState Redo(string key) => Change(key, new("redo", null));

    private DraftState Change(string key, Entry entry)
    {
        lock (LockOf(key))
        {
            return Add(key, Read(key), entry);
        }
    }

    private DraftState Add(string key, DraftState? state, Entry entry)
    {
        Directory.CreateDirectory(folder);
        using (var file = new FileStream(PathOf(key), FileMode.Append, FileAccess.Write, FileShare.Read))
        {
            // On a line of its own, also after one that a crash cut off.
            file.Write(Encoding.UTF8.GetBytes("\n" + JsonSerializer.Serialize(entry) + "\n"));
            file.Flush(flushToDisk: true);
        }

        return known[key] = (state ?? DraftState.None).After(entry);
    }

    // A line that a crash cut off was never shown to anybody, and is left out.
    private DraftState? Read(string key)
    {
        if (known.TryGetValue(key, out var remembered))
        {
            return remembered;
        }

        if (!File.Exists(PathOf(key)))
        {
            return null;
        }

        var state = DraftState.None;
        foreach (var line in File.ReadLines(PathOf(key)).Where(line => line.Length > 0))
        {
            try
            {
                state = state.After(JsonSerializer.Deserialize<Entry>(line)!);
            }
            catch (JsonException)
            {
                continue;
            }
        }

        return state.Number == 0 ? null : state;
    }

    private object LockOf(string key) => locks.GetOrAdd(key, _ => new());

    private string PathOf(string key) =>
        key.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_' or '.') ? Path.Combine(folder, key + ".jsonl") : throw new ArgumentException($"Not a key: {key}", nameof(key));

    /// <param name="Do">edit, undo or redo.</param>
    public sealed record Entry(string Do, string? Document);
}
