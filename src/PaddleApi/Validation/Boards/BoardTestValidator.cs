using FluentValidation;
using Paddle.Design.Build;
using Paddle.Design.Fitting;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Boards;

namespace PaddleApi.Validation.Boards;

/// <summary>
/// The rules of a board test. Ranges only keep out slips of the unit; what is merely odd for the species is answered with a warning.
/// </summary>
internal sealed class BoardTestValidator : BoundedValidator<BoardTestRequest>
{
    private const string Needed = "This reading is required: density comes from it.";
    private const int LongestName = 64;

    /// <summary>States the rules.</summary>
    public BoardTestValidator()
    {
        RuleFor(r => r.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id)).EngineRequired();
        RuleFor(r => r.MoisturePercent).Needed("Moisture is required: wood swells and slackens with it.");
        RuleFor(r => r.LengthMm).Needed(Needed);
        RuleFor(r => r.WidthMm).Needed(Needed);
        RuleFor(r => r.ThicknessMm).Needed(Needed);
        RuleFor(r => r.MassG).Needed(Needed);
        RuleFor(r => r.Sag!).SetValidator(new SagRules());
        RuleFor(r => r.Tap!).SetValidator(new TapRules());
        RuleFor(r => r.ReadingErrors!).SetValidator(new BoundedValidator<BoardErrorsRequest>());
        RuleFor(r => r).Custom((request, context) =>
        {
            CheckSpecies(request.Species, context);
            if (request is { Sag: not null, Tap: not null })
                context.AddFault("Tap", new("Stiffness is read by sag or by tap: leave one of them out, and test twice to compare them.", Code: "sag-or-tap"));
            if (request is { Sag.SpanMm: { } span, LengthMm: { } length } && span > length)
                context.AddFault("Sag.SpanMm", new("The span must not be longer than the board.", FaultValue.Show(span), Max: length, Unit: "mm", Code: "span-beyond-board"));
            CheckErrors(request, context);
        });
    }

    // Below twice its uncertainty a reading may as well be nothing, and a stiffness or density from it anything.
    private static void CheckErrors(BoardTestRequest request, ValidationContext<BoardTestRequest> context)
    {
        var (usual, stated) = (new ReadingErrors(), request.ReadingErrors);
        foreach (var (path, reading, error, unit) in ((string, double?, double, string)[])
            [
                ("LengthMm", request.LengthMm, stated?.LengthMm ?? usual.LengthMm, "mm"),
                ("WidthMm", request.WidthMm, stated?.WidthMm ?? usual.WidthMm, "mm"),
                ("ThicknessMm", request.ThicknessMm, stated?.ThicknessMm ?? usual.ThicknessMm, "mm"),
                ("MassG", request.MassG, stated?.MassG ?? usual.MassG, "g"),
                ("Sag.SpanMm", request.Sag?.SpanMm, stated?.SpanMm ?? usual.SpanMm, "mm"),
                ("Sag.SagMm", request.Sag?.SagMm, stated?.SagMm ?? usual.SagMm, "mm"),
                ("Tap.FrequencyHz", request.Tap?.FrequencyHz, stated?.FrequencyHz ?? usual.FrequencyHz, "Hz"),
            ])
        {
            if (reading < 2 * error)
                context.AddFault(path, new(
                    "A reading must be at least twice its own uncertainty (readingErrors) to say anything.", FaultValue.Show(reading), Min: 2 * error, Unit: unit,
                    Code: "reading-below-error"));
        }
    }

    private static void CheckSpecies(string? species, ValidationContext<BoardTestRequest> context)
    {
        const string Path = "Species";
        if (species is null)
        {
            context.AddFault(Path, new("A species is required: the board is held against its published mean and spread.", Code: RefusalCodes.Missing));
        }
        else if (WoodCatalogue.Find(species) is null)
        {
            var nearest = species.Length <= LongestName ? WoodCatalogue.NearestIds(species) : [];
            var near = nearest.Count == 0 ? "" : $" The nearest are {string.Join(", ", nearest)}.";
            context.AddFault(Path, new(
                $"No wood has this id.{near} All ids are listed at /v1/woods.", FaultValue.Show(species), Allowed: nearest.Count == 0 ? null : nearest,
                Code: RefusalCodes.UnknownName));
        }
    }

    private sealed class SagRules : BoundedValidator<SagRequest>
    {
        public SagRules()
        {
            const string Needed = "This reading is required: stiffness comes from span, load and sag together.";
            RuleFor(s => s.SpanMm).Needed(Needed);
            RuleFor(s => s.LoadN).Needed(Needed);
            RuleFor(s => s.SagMm).Needed(Needed);
        }
    }

    private sealed class TapRules : BoundedValidator<TapRequest>
    {
        public TapRules() => RuleFor(t => t.FrequencyHz).Needed("This reading is required: stiffness comes from the tone.");
    }
}
