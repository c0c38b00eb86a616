using Paddle.Design.Request;
using Paddle.Drawings;

namespace PaddleApi.Contracts.Designs;

/// <summary>Names of the paper that templates are printed on.</summary>
internal static class PaperNames
{
    /// <summary>Paper of printed templates.</summary>
    public static NameTable<PaperSize> Papers { get; } =
        new(("a4", PaperSize.A4), ("letter", PaperSize.Letter), ("a3", PaperSize.A3), ("roll", PaperSize.Roll));

    /// <summary>Paper that a desk printer takes.</summary>
    public static NameTable<PaperSize> Desk { get; } = new(("a4", PaperSize.A4), ("letter", PaperSize.Letter));
}
