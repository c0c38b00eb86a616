using FluentValidation;
using Paddle.Design;
using Paddle.Design.Fitting;
using PaddleApi.Contracts.Problems;

namespace PaddleApi.Validation;

/// <summary>Rules of a record that begin with the bounds written beside its members; those of records inside it are their own validators'.</summary>
/// <typeparam name="T">The record.</typeparam>
internal class BoundedValidator<T> : AbstractValidator<T>
    where T : class
{
    /// <summary>Takes over the bounds.</summary>
    public BoundedValidator() => RuleFor(part => part).Custom((part, context) =>
    {
        foreach (var (member, value) in Bounds.Broken(part)) context.AddFaultBelow(member.Member.Name, Refusal(member.Bound, value));
    });

    private static Fault Refusal(BoundAttribute bound, double value) =>
        new(bound.Reason, FaultValue.Show(value), bound.Least, bound.Most, bound.Unit, Code: RefusalCodes.OutOfRange);
}
