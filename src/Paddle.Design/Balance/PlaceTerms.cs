using Paddle.Design.Solid;

namespace Paddle.Design.Balance;

/// <summary>What one place of the coarse grid contributes to a design problem, with everything that does not change while the sizes are
/// chosen worked out beforehand: the half-width is linear in the shaft's widths, the thickness in the sizes and spine slopes.</summary>
internal struct PlaceTerms
{
    internal StationPattern Pattern;
    internal StripNumbers Mass;        // of the section, each strip by its density
    internal double MassLess;          // mm that sheets on the faces take off the mean half-thickness, weighted
    internal SectionSum Stiff;         // the same by its modulus
    internal double Hollow;            // mm off the thickness
    internal double HollowRate;        // the same in the face's rate, twice the depth's
    internal double UnitMm;            // length of one unit of the segment's coordinate
    internal double WidthBase;         // half-width = base + perShaft·shaftWidth + perUpper·upperWidth
    internal double WidthPerShaft;
    internal double WidthPerUpper;
    internal double VolumeWeight;      // mm of length the place stands for
    internal double Along;             // mm along the shaft's line
    internal double BendingFlex;       // flex = Σ bending/I + Σ shear/A
    internal double ShearFlex;
    internal double AllowancePerSlope; // growth of the stress with the face's slope
    internal double ModulusNeeded;     // mm³; 0 where nothing bends
}
