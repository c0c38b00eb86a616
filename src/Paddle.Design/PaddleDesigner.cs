namespace Paddle.Design;

/// <summary>Calls the steps of a design in the order the work flows.</summary>
public static class PaddleDesigner
{
    /// <summary>Designs a paddle.</summary>
    /// <param name="specification">What is asked; checked beforehand.</param>
    public static DesignReport Design(PaddleSpecification specification) => throw new NotImplementedException();
}
