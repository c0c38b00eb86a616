using FluentValidation;
using Paddle.Design.Build;
using Paddle.Design.Fitting;
using Paddle.Design.Wood;
using PaddleApi.Contracts.Boards;

namespace PaddleApi.Validation.Boards;

/// <summary>
/// The rules of a board test. Ranges only keep out slips of the unit; what is merely odd for the species is answered with a warning.
/// </summary>
internal sealed class BoardTestValidator : AbstractValidator<BoardTestRequest>
{
    private const string Own = "service's own limit";
    private const string Needed = "This reading is required: density comes from it.";
    private const int LongestName = 64;

    /// <summary>States the rules.</summary>
    public BoardTestValidator()
    {
        RuleFor(r => r.Species).EngineNames(WoodCatalogue.All.Select(species => species.Id)).EngineRequired();
        RuleFor(r => r.MoisturePercent).NotNull().Saying("Moisture is required: wood swells and slackens with it.")
            .InRange(0, 40, "percent", $"From ovendry to fresh from the saw ({Own}).");
        RuleFor(r => r.LengthMm).NotNull().Saying(Needed).InRange(100, 6000, "mm", $"Boards and test sticks ({Own}).");
        RuleFor(r => r.WidthMm).NotNull().Saying(Needed).InRange(5, 600, "mm", $"Boards and test sticks ({Own}).");
        RuleFor(r => r.ThicknessMm).NotNull().Saying(Needed).InRange(2, 120, "mm", $"Boards and test sticks ({Own}).");
        RuleFor(r => r.MassG).NotNull().Saying(Needed).InRange(1, 100000, "g", $"Boards and test sticks ({Own}).");
        RuleFor(r => r.Sag!).SetValidator(new SagRules());
        RuleFor(r => r.Tap!).SetValidator(new TapRules());
        RuleFor(r => r.ReadingErrors!).SetValidator(new ErrorRules());
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

    private sealed class SagRules : AbstractValidator<SagRequest>
    {
        public SagRules()
        {
            const string Needed = "This reading is required: stiffness comes from span, load and sag together.";
            RuleFor(s => s.SpanMm).NotNull().Saying(Needed).InRange(50, 6000, "mm", $"Spans of boards and test sticks ({Own}).");
            RuleFor(s => s.LoadN).NotNull().Saying(Needed).InRange(0.1, 2000, "N", $"Weights that a hand can put on ({Own}).");
            RuleFor(s => s.SagMm).NotNull().Saying(Needed).InRange(0.05, 300, "mm", $"Sags that a rule can read ({Own}).");
        }
    }

    private sealed class TapRules : AbstractValidator<TapRequest>
    {
        public TapRules() => RuleFor(t => t.FrequencyHz).NotNull().Saying("This reading is required: stiffness comes from the tone.")
            .InRange(1, 20000, "Hz", $"Tones that can be heard or recorded ({Own}).");
    }

    private sealed class ErrorRules : AbstractValidator<BoardErrorsRequest>
    {
        public ErrorRules()
        {
            const string Reason = "A reading worse than this says nothing (" + Own + ").";
            RuleFor(e => e.LengthMm).InRange(0, 50, "mm", Reason);
            RuleFor(e => e.WidthMm).InRange(0, 20, "mm", Reason);
            RuleFor(e => e.ThicknessMm).InRange(0, 10, "mm", Reason);
            RuleFor(e => e.MassG).InRange(0, 500, "g", Reason);
            RuleFor(e => e.SpanMm).InRange(0, 50, "mm", Reason);
            RuleFor(e => e.LoadPercent).InRange(0, 50, "percent", Reason);
            RuleFor(e => e.SagMm).InRange(0, 20, "mm", Reason);
            RuleFor(e => e.FrequencyHz).InRange(0, 500, "Hz", Reason);
        }
    }
}
