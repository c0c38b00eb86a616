namespace Paddle.Design.Wood;

/// <summary>Finds the names somebody most likely meant.</summary>
internal static class NearestNames
{
    /// <summary>The ids nearest to a wrong one. An id that has the text as a whole word comes first, then one that merely holds it, then
    /// the fewest single-letter slips counted against the whole id or its nearest word; ties go by spelling.</summary>
    public static IReadOnlyList<string> Rank(IEnumerable<string> ids, string wrong, int count)
    {
        var text = string.Join('-', wrong.ToLowerInvariant().Split([' ', '_', '-'], StringSplitOptions.RemoveEmptyEntries));
        return [.. ids.OrderBy(id => Closeness(id, text)).ThenBy(id => Slips(id, text)).ThenBy(id => id, StringComparer.Ordinal)
            .Take(Math.Max(count, 0))];
    }

    private static int Closeness(string id, string text)
    {
        if (text.Length == 0) return 0;

        var words = id.Split('-');
        if (words.Contains(text)) return 0;
        return id.Contains(text, StringComparison.Ordinal) ? 1 : 2 + Math.Min(Slips(id, text), words.Min(word => Slips(word, text)));
    }

    // Levenshtein distance by rows: insertions, deletions and swaps of one letter for another each count one.
    private static int Slips(string a, string b)
    {
        var above = new int[b.Length + 1];
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) above[j] = j;

        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var swap = above[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(swap, Math.Min(above[j], row[j - 1]) + 1);
            }

            (above, row) = (row, above);
        }

        return above[b.Length];
    }
}
