using FluentValidation;
using Paddle.Design.Fitting;
using Paddle.Design.Request;

namespace PaddleApi.Validation.Designs;

/// <summary>The rules of a design that stands in a larger request; those of its own members are checked where it is made.</summary>
internal abstract class GivenDesignRules<T> : BoundedValidator<T>
    where T : class, IGivesDesign
{
    /// <summary>States the rules.</summary>
    /// <param name="what">What is given, at the beginning of a sentence.</param>
    protected GivenDesignRules(string what)
    {
        RuleFor(p => p).Custom((given, context) =>
        {
            if (given.DesignCode is null == given.Design is null)
                context.AddFaultBelow(nameof(given.DesignCode), new($"{what} is given by designCode or by design: one of them.", Code: RefusalCodes.OneFigureEach));
        });
    }
}
