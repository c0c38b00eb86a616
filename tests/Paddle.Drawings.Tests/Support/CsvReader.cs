using System.Text;

namespace Paddle.Drawings.Tests.Support;

/// <summary>A small reader of comma-separated values (RFC 4180), apart from the code under test.</summary>
internal static class CsvReader
{
    /// <summary>Every record with its fields, the header first.</summary>
    public static List<List<string>> Rows(string text)
    {
        var (rows, row, field, quoted) = (new List<List<string>>(), new List<string>(), new StringBuilder(), false);
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '"' && quoted && i + 1 < text.Length && text[i + 1] == '"') field.Append(text[i++]);
            else if (text[i] == '"') quoted = !quoted;
            else if (text[i] == ',' && !quoted)
            {
                row.Add(field.ToString());
                field.Clear();
            }
            else if (text[i] == '\n' && !quoted)
            {
                row.Add(field.ToString().TrimEnd('\r'));
                rows.Add(row);
                (row, field) = ([], new());
            }
            else field.Append(text[i]);
        }

        Assert.False(quoted);
        Assert.Empty(row);
        return rows;
    }
}
