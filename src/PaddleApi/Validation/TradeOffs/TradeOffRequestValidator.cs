using System.Text.Json;
using FluentValidation;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.TradeOffs;
using PaddleApi.Validation.Designs;

namespace PaddleApi.Validation.TradeOffs;

/// <summary>The rules of a request for a trade-off.</summary>
internal sealed class TradeOffRequestValidator : AbstractValidator<TradeOffRequest>
{
    private const int MostVaried = 3, MostValues = 100, MostObjectives = 4, LongestText = 100;
    private const string Own = "service's own limit";
    private static readonly DesignRequestValidator DesignRules = new();

    /// <summary>States the rules.</summary>
    public TradeOffRequestValidator()
    {
        RuleFor(r => r.Base).Needed("A design is required: the one that varies.");
        RuleFor(r => r.Vary).Needed("At least one input that varies is required.");
        RuleFor(r => r.Vary).EngineCount(1, MostVaried);
        RuleForEach(r => r.Vary).SetValidator(new VariedRules()).When(r => r.Vary?.Count <= MostVaried);
        RuleFor(r => r.Minimise).AtMost(MostObjectives, "wishes", $"Up to {MostObjectives} wishes in all ({Own}).");
        RuleFor(r => r.Maximise).AtMost(MostObjectives, "wishes", $"Up to {MostObjectives} wishes in all ({Own}).");
        RuleForEach(r => r.Minimise).Pointer().When(r => r.Minimise?.Count <= MostObjectives);
        RuleForEach(r => r.Maximise).Pointer().When(r => r.Maximise?.Count <= MostObjectives);
        RuleFor(r => r).Custom(Together);
    }

    private static void Together(TradeOffRequest request, ValidationContext<TradeOffRequest> context)
    {
        foreach (var failure in request.Base is { } design ? DesignRules.Validate(design).Errors : []) context.AddFault($"Base.{failure.PropertyName}", failure.ToFault());
        string[] wishes = [.. request.Minimise ?? [], .. request.Maximise ?? []];
        if (wishes.Length is < 2 or > MostObjectives)
            context.AddFault("Minimise", new($"A trade-off is between two wishes or more, up to {MostObjectives} in minimise and maximise together ({Own}).", wishes.Length, 2, MostObjectives, "wishes", Code: "two-wishes"));
        if (wishes.Distinct().Count() < wishes.Length) context.AddFault("Minimise", new("A figure is wished once.", Code: RefusalCodes.GivenTwice));
        if (request.Vary is not { } vary) return;
        if (vary.Count is 0 or > MostVaried)
        {
            context.AddFault("Vary", new($"One input varies, or up to {MostVaried} at once ({Own}).", vary.Count, 1, MostVaried, "inputs"));
            return;
        }

        var designs = vary.Aggregate(1L, (count, input) => count * Math.Max(1, input.Values?.Count ?? 1));
        if (designs > TradeOffRequest.MostDesigns)
            context.AddFault("Vary", new($"All combinations together: up to {TradeOffRequest.MostDesigns} are designed at once ({Own}).", designs, 1, TradeOffRequest.MostDesigns, "designs"));
        for (var k = 0; k < vary.Count; k++)
        {
            for (var other = 0; other < k; other++)
            {
                if (vary[k].Pointer is { } own && vary[other].Pointer is { } first && (own + '/').StartsWith(first + '/', StringComparison.Ordinal) | (first + '/').StartsWith(own + '/', StringComparison.Ordinal))
                    context.AddFault($"Vary[{k}].Pointer", new("Another input that varies holds this one already.", FaultValue.Show(own), Code: RefusalCodes.GivenTwice));
            }
        }
    }

    private sealed class VariedRules : AbstractValidator<VariedInput>
    {
        public VariedRules()
        {
            RuleFor(v => v.Pointer).Needed("The pointer is required: it names the input.");
            RuleFor(v => v.Pointer).EngineText(JsonPointers.Pattern, JsonPointers.Longest).Pointer();
            RuleFor(v => v.Values).Needed("The values are required.");
            RuleFor(v => v.Values).EngineCount(1, MostValues);
            RuleFor(v => v).Custom((input, context) =>
            {
                if (input.Values is not { } values) return;
                if (values.Count is 0 or > MostValues)
                    context.AddFaultBelow("Values", new($"One value, or up to {MostValues} of one input ({Own}).", values.Count, 1, MostValues, "values"));
                for (var j = 0; j < Math.Min(values.Count, MostValues); j++)
                {
                    if (values[j].ValueKind is JsonValueKind.Object or JsonValueKind.Array or JsonValueKind.Null || !IsText(values[j]))
                        context.AddFaultBelow($"Values[{j}]", new($"A number, a text of up to {LongestText} characters, true or false is expected.", Code: RefusalCodes.WrongType));
                }
            });
        }

        // Half a surrogate pair is well-formed JSON but no text; a long one would come back in every design.
        private static bool IsText(JsonElement value)
        {
            if (value.ValueKind != JsonValueKind.String) return true;
            try
            {
                return value.GetString()!.Length <= LongestText;
            }
            catch (InvalidOperationException)
            {
                return false;
            }
        }
    }
}

/// <summary>The rule of a JSON Pointer.</summary>
file static class PointerRules
{
    internal static IRuleBuilderOptions<T, string?> Pointer<T>(this IRuleBuilder<T, string?> rule) =>
        rule.Must(text => text is null || (text.Length > 0 && JsonPointers.IsPointer(text)))
            .Because("A JSON Pointer (RFC 6901) begins with / and names a place, such as /mass/finishedG.");
}
