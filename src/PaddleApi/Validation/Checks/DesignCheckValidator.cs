using System.Text.Json;
using FluentValidation;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Checks;
using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Problems;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Validation.Checks;

/// <summary>The rules of a catalogue of checks; those of the designs in it are the designs' own.</summary>
internal sealed class DesignCheckValidator : AbstractValidator<DesignCheckRequest>
{
    private const string Own = "service's own limit";
    private const int MostCases = 200, MostExpectations = 100;

    /// <summary>States the rules.</summary>
    public DesignCheckValidator()
    {
        RuleFor(r => r.Label).Printable(Labels.Longest);
        RuleFor(r => r.Cases).EngineRequired().NotEmpty().Because("At least one case is required.").AtMost(MostCases, "cases", $"Up to {MostCases} designs are checked at once ({Own}).");
        RuleForEach(r => r.Cases).SetValidator(new CaseRules()).When(r => r.Cases?.Count <= MostCases);
        RuleFor(r => r.Tolerances!).SetValidator(new BoundedValidator<ToleranceRequest>());
        RuleFor(r => r).Custom((request, context) => context.RefuseSameIds("Cases", request.Cases?.Take(MostCases).Select(one => one.Id)));
    }

    private sealed class CaseRules : GivenDesignRules<CheckedDesignRequest>
    {
        public CaseRules()
            : base("A case")
        {
            RuleFor(c => c.Id).Needed("An id is required: the answer names the case by it.").Printable(Labels.Longest);
            RuleFor(c => c.DesignCode).EngineText(DesignCodes.Pattern, DesignCodes.MostCharacters);
            RuleFor(c => c.Expect).AtMost(MostExpectations, "expectations", $"Up to {MostExpectations} for one design ({Own}).");
            RuleForEach(c => c.Expect).SetValidator(new ExpectationRules()).When(c => c.Expect?.Count <= MostExpectations);
            RuleFor(c => c).Custom((given, context) =>
            {
                if (given.Expect is not { Count: > 0 } && given.Approved is null)
                    context.AddFaultBelow(nameof(given.Expect), new("A case expects something: expect holds one or more figures, or approved a report.", Code: RefusalCodes.OneFigureEach));
                if (given.Approved is { } approved && Fault(approved) is { } reason)
                    context.AddFaultBelow(nameof(given.Approved), new(reason, Code: RefusalCodes.WrongType));
            });
        }

        private static string? Fault(JsonElement approved) =>
            approved.ValueKind != JsonValueKind.Object ? "A report is an object."
            : AnyJson.IsPlain(approved) ? null
            : "This holds a number that is too large, or text that is not Unicode.";
    }

    private sealed class ExpectationRules : BoundedValidator<ExpectationRequest>
    {
        public ExpectationRules()
        {
            RuleFor(e => e.Pointer).Needed("A pointer is required: it names the value in the report.").EngineText(JsonPointers.Pattern, JsonPointers.Longest);
            RuleFor(e => e.Pointer).Must(pointer => pointer is null || JsonPointers.IsPointer(pointer))
                .Because($"A JSON Pointer (RFC 6901) of up to {JsonPointers.Longest} characters is expected, such as /mass/finishedG.");
            RuleFor(e => e).Custom((given, context) =>
            {
                foreach (var (member, fault) in Faults(given)) context.AddFaultBelow(member, fault);
            });
        }

        private static IEnumerable<(string Member, Fault Fault)> Faults(ExpectationRequest given)
        {
            if (given is { Least: null, Most: null, EqualTo: null })
                yield return ("Least", new("Something is expected: least, most or equals.", Code: RefusalCodes.OneFigureEach));
            if (given.Least > given.Most) yield return ("Least", new("The least is more than the most.", given.Least));
            if (given.EqualTo is { } equal && (equal.ValueKind is JsonValueKind.Object or JsonValueKind.Array || !AnyJson.IsPlain(equal)))
                yield return ("Equals", new("A number, a text, or true or false is expected.", Code: RefusalCodes.WrongType));
            if (given.Within is not null && given.EqualTo is not { ValueKind: JsonValueKind.Number })
                yield return ("Within", new("This says how far the value may lie from the number in equals: give that too.", given.Within));
        }
    }
}
