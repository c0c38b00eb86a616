using System.IO.Compression;
using Paddle.Drawings.Sheets;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Paddle.Drawings.Files;

/// <summary>A PDF of drawn pages: the same drawings give the same bytes.</summary>
internal sealed class PdfBook : IDisposable
{
    private readonly PdfDocument document = new();
    private readonly PdfDictionary resources;

    /// <summary>Begins a document.</summary>
    public PdfBook(string title, DrawingContext context)
    {
        // The library copies the title into XML as it stands, so the three signs that XML would read must not be in it.
        document.Info.Title = Lettering.Safe(title).Replace('<', '(').Replace('>', ')').Replace('&', '+');
        document.Info.Creator = $"Paddle engine {context.EngineVersion}";
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");
        document.Language = "en";

        // The same design must give the same bytes: no clock, no chance.
        document.Info.CreationDate = new DateTime(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);
        document.Info.ModificationDate = document.Info.CreationDate;
        document.Internals.FirstDocumentID = "paddle-templates";
        document.Internals.SecondDocumentID = "paddle-templates";
        resources = Helvetica.Resources(document);
    }

    public void Dispose() => document.Dispose();

    /// <summary>Adds a page of a size in mm.</summary>
    public void Add(double widthMm, double heightMm, string bookmark, Action<PdfInk> paint)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromMillimeter(widthMm);
        page.Height = XUnit.FromMillimeter(heightMm);
        document.Outlines.Add(bookmark, page);
        page.Elements.SetReference("/Resources", resources);
        var ink = new PdfInk(heightMm);
        paint(ink);

        // Packed here: what the library packs ends without its last block, and strict readers say so.
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true)) zlib.Write(ink.ToBytes());
        var content = page.Contents.AppendContent();
        content.CreateStream(packed.ToArray());
        content.Elements.SetName("/Filter", "/FlateDecode");
    }

    /// <summary>Writes the document to a stream that may neither seek nor be closed.</summary>
    public void Write(Stream output)
    {
        using var bytes = new MemoryStream();
        document.Save(bytes, closeStream: false);
        var written = bytes.GetBuffer().AsSpan(0, (int)bytes.Length);
        FixIdentifiers(written);
        output.Write(written);
    }

    // The library's metadata name the document by two random numbers. They are set to nothing, in place, so that no offset moves.
    private static void FixIdentifiers(Span<byte> pdf)
    {
        var mark = "ID>uuid:"u8;
        const int Digits = 36;
        for (var from = 0; ;)
        {
            var at = pdf[from..].IndexOf(mark);
            if (at < 0) return;
            from += at + mark.Length;
            foreach (ref var digit in pdf.Slice(from, Digits))
            {
                if (digit != (byte)'-') digit = (byte)'0';
            }
        }
    }
}
