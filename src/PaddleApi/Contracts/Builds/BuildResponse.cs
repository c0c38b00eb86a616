using System.Text.Json.Serialization;
using Paddle.Design.Layout;
using PaddleApi.Contracts.Designs;
using PaddleApi.Contracts.Numbers;

namespace PaddleApi.Contracts.Builds;

/// <summary>From board to finished paddle: what to mark, what to measure and when to stop.</summary>
/// <param name="EngineVersion">Version of the engine that computed it.</param>
/// <param name="DesignCode">Code of the design.</param>
/// <param name="Links">Where to fetch sheet and design again.</param>
/// <param name="Label">Name of the design, if it has one.</param>
/// <param name="Outcome"><c>met</c>, or <c>closest</c> when the design misses an aim.</param>
/// <param name="UnmetAims">The aims missed, the gravest first, with what to do; a code that begins with <c>strength.</c> means: do not build it so.</param>
/// <param name="Blank">The board.</param>
/// <param name="Stages">Every stage in the order of the work.</param>
/// <param name="ShaftLines">Eight- and sixteen-side lines at the shaft's stations.</param>
/// <param name="Gauge">A spar gauge for them.</param>
/// <param name="RoundOvers">Round-over bits that may be used instead, largest first.</param>
/// <param name="Kerf">The saw kerf across the grip that says how deep to pare.</param>
/// <param name="Sanding">Sanding by zone.</param>
/// <param name="Finish">The design's finish, with quantities and days.</param>
/// <param name="WithFinish">Mass and balance with it on; the last stage, <c>finished</c>, has the same with their bands.</param>
/// <param name="Tip">A reinforced tip of usual cloth, chosen or offered.</param>
/// <param name="InService">The paddle at the moisture it is used at; only where the query states it.</param>
/// <param name="OnBoard">Where the paddle lies on the maker's own board, as often as that holds it; only where the query states the board.</param>
/// <param name="Assumptions">What the figures rest on, with sources.</param>
/// <param name="GlueUp">What comes before the first stage where it is glued up of strips; absent of one piece.</param>
internal sealed record BuildResponse(
    string EngineVersion,
    string DesignCode,
    BuildLinks Links,
    string? Label,
    string Outcome,
    IReadOnlyList<DesignUnmetAim> UnmetAims,
    BuildBlank Blank,
    IReadOnlyList<BuildStageSheet> Stages,
    IReadOnlyList<BuildShaftLine> ShaftLines,
    BuildGauge Gauge,
    IReadOnlyList<BuildRoundOver> RoundOvers,
    BuildKerf Kerf,
    IReadOnlyList<BuildSanding> Sanding,
    BuildFinish Finish,
    BuildLaden WithFinish,
    BuildTip Tip,
    BuildInService? InService,
    BoardLayout? OnBoard,
    IReadOnlyList<string> Assumptions,
    IReadOnlyList<string>? GlueUp);

/// <summary>Where to fetch a build sheet again.</summary>
/// <param name="Self">This answer.</param>
/// <param name="Sheet">The same to print.</param>
/// <param name="SheetPdf">That as a PDF, six pages at most.</param>
/// <param name="Design">The design.</param>
internal sealed record BuildLinks(string Self, string Sheet, string SheetPdf, string Design);

/// <summary>The board that the paddle is cut from.</summary>
/// <param name="LengthMm">Length with both ends' trim, mm.</param>
/// <param name="WidthMm">Width, mm.</param>
/// <param name="ThicknessMm">Thickness, mm.</param>
/// <param name="EndTrimMm">Kept beyond the paddle at each end, clear of end checks, mm.</param>
/// <param name="ThickestSectionMm">Thickest finished section that it must hold, mm.</param>
/// <param name="OverMm">Wood to plane away at the thickest section, both faces together, mm.</param>
/// <param name="IsOwn">Whether it is the maker's own board, and no stock to be bought.</param>
/// <param name="Stock">Name of the thickness in the trade.</param>
internal sealed record BuildBlank(
    [property: JsonConverter(typeof(Tenths))] double LengthMm,
    [property: JsonConverter(typeof(Tenths))] double WidthMm,
    [property: JsonConverter(typeof(Tenths))] double ThicknessMm,
    [property: JsonConverter(typeof(Tenths))] double EndTrimMm,
    [property: JsonConverter(typeof(Tenths))] double ThickestSectionMm,
    [property: JsonConverter(typeof(Tenths))] double OverMm,
    bool IsOwn,
    string Stock);

/// <summary>One stage of the work.</summary>
/// <param name="Id">Its name, as a balance correction asks for it.</param>
/// <param name="Title">Its title.</param>
/// <param name="Allowance">Wood left on outside the designed sizes.</param>
/// <param name="MassG">Predicted mass, g: of bare wood up to <c>sanded</c>, with its finish at <c>finished</c>.</param>
/// <param name="BalanceMm">Predicted balance point, mm from the finished top of the grip along the shaft's line.</param>
/// <param name="Stations">What caliper and rule should read at the numbered stations.</param>
/// <param name="Mark">What to mark and do.</param>
/// <param name="Measure">What to measure.</param>
/// <param name="StopWhen">The sign to stop.</param>
/// <param name="NextMoveMm">How far the balance point is expected to move at the next stage, mm; positive towards the tip.</param>
/// <param name="NextMove">The same in words.</param>
/// <param name="Cautions">What can hurt, with sources.</param>
internal sealed record BuildStageSheet(
    string Id,
    string Title,
    BuildAllowance Allowance,
    BuildBand MassG,
    BuildBand BalanceMm,
    IReadOnlyList<BuildStation> Stations,
    IReadOnlyList<string> Mark,
    IReadOnlyList<string> Measure,
    string StopWhen,
    [property: JsonConverter(typeof(Tenths))] double NextMoveMm,
    string NextMove,
    IReadOnlyList<DesignCaution> Cautions);

/// <summary>Wood left outside the designed sizes; null where the board's full thickness still stands.</summary>
/// <param name="OutlineMm">Outside the outline, on each side, mm.</param>
/// <param name="BladeFaceMm">On each face of the blade, mm, or null.</param>
/// <param name="ShaftFaceMm">On each face and side of the shaft, mm, or null.</param>
/// <param name="GripFaceMm">On each face of the grip, mm, or null.</param>
/// <param name="FaceToleranceMm">How well a face is held by the tools of this stage, mm: 9 times in 10 within it.</param>
internal sealed record BuildAllowance(
    [property: JsonConverter(typeof(Hundredths))] double OutlineMm,
    [property: JsonConverter(typeof(Hundredths))] double? BladeFaceMm,
    [property: JsonConverter(typeof(Hundredths))] double? ShaftFaceMm,
    [property: JsonConverter(typeof(Hundredths))] double? GripFaceMm,
    [property: JsonConverter(typeof(Hundredths))] double FaceToleranceMm);

/// <summary>A predicted figure with the band that nine paddles in ten fall in; the name of the member that holds it says the unit.</summary>
/// <param name="Value">Prediction for the design's wood.</param>
/// <param name="Low">5th percentile.</param>
/// <param name="High">95th percentile.</param>
internal sealed record BuildBand(
    [property: JsonConverter(typeof(Tenths))] double Value,
    [property: JsonConverter(typeof(Tenths))] double Low,
    [property: JsonConverter(typeof(Tenths))] double High);

/// <summary>What caliper and rule should read at one numbered station.</summary>
/// <param name="Number">Number, from 1 at the top of the grip.</param>
/// <param name="XMm">Place from the top of the grip, mm.</param>
/// <param name="ThicknessMm">Thickness on the centre line, mm.</param>
/// <param name="HalfBreadthMm">Centre line to the outside of the wood, mm.</param>
/// <param name="Mark">What is marked there, such as <c>throat</c>; absent at an even place of the maker's rule.</param>
internal sealed record BuildStation(
    int Number,
    [property: JsonConverter(typeof(Tenths))] double XMm,
    [property: JsonConverter(typeof(Tenths))] double ThicknessMm,
    [property: JsonConverter(typeof(Tenths))] double HalfBreadthMm,
    string? Mark);

/// <summary>Lines to mark at one station of the squared shaft before its corners come off.</summary>
/// <param name="Number">Number of the station.</param>
/// <param name="XMm">Place from the top of the grip, mm.</param>
/// <param name="WidthMm">Width of the squared shaft seen on the face, mm.</param>
/// <param name="ThicknessMm">Thickness of the squared shaft, mm.</param>
/// <param name="LineOnFaceMm">Eight-side line from each edge of the faces, mm.</param>
/// <param name="LineOnSideMm">Eight-side line from each edge of the sides, mm.</param>
/// <param name="ChamferDegrees">Angle between corner facet and face, degrees.</param>
/// <param name="SixteenOnFaceMm">Sixteen-side line in from each corner of the octagon on the faces, mm.</param>
/// <param name="SixteenOnSideMm">The same on the sides, mm.</param>
/// <param name="SixteenOnCornerMm">The same on the corner facets, mm.</param>
internal sealed record BuildShaftLine(
    int Number,
    [property: JsonConverter(typeof(Tenths))] double XMm,
    [property: JsonConverter(typeof(Tenths))] double WidthMm,
    [property: JsonConverter(typeof(Tenths))] double ThicknessMm,
    [property: JsonConverter(typeof(Tenths))] double LineOnFaceMm,
    [property: JsonConverter(typeof(Tenths))] double LineOnSideMm,
    [property: JsonConverter(typeof(Tenths))] double ChamferDegrees,
    [property: JsonConverter(typeof(Tenths))] double SixteenOnFaceMm,
    [property: JsonConverter(typeof(Tenths))] double SixteenOnSideMm,
    [property: JsonConverter(typeof(Tenths))] double SixteenOnCornerMm);

/// <summary>A spar gauge: two fences that ride the shaft's sides, and two points between them that scribe the eight-side lines.</summary>
/// <param name="BetweenFencesMm">Clear width between the fences, mm.</param>
/// <param name="FirstPointMm">Fence to the first point, mm.</param>
/// <param name="BetweenPointsMm">Between the two points, mm.</param>
/// <param name="LastPointMm">Second point to the other fence, mm.</param>
/// <param name="LineErrorMm">How far its line lies outside the exact one on the widest face, mm: wood left on, never cut into.</param>
internal sealed record BuildGauge(
    [property: JsonConverter(typeof(Hundredths))] double BetweenFencesMm,
    [property: JsonConverter(typeof(Hundredths))] double FirstPointMm,
    [property: JsonConverter(typeof(Hundredths))] double BetweenPointsMm,
    [property: JsonConverter(typeof(Hundredths))] double LastPointMm,
    [property: JsonConverter(typeof(Hundredths))] double LineErrorMm);

/// <summary>A round-over bit that may be used on the squared shaft.</summary>
/// <param name="Name">Radius as bits are sold.</param>
/// <param name="RadiusMm">Radius, mm.</param>
/// <param name="FlatLeftMm">Flat left for the bearing on the thinner side, mm.</param>
/// <param name="LeftAtCornerMm">Wood left at the corner for the hand tools, mm.</param>
internal sealed record BuildRoundOver(
    string Name,
    [property: JsonConverter(typeof(Hundredths))] double RadiusMm,
    [property: JsonConverter(typeof(Hundredths))] double FlatLeftMm,
    [property: JsonConverter(typeof(Hundredths))] double LeftAtCornerMm);

/// <summary>The saw kerf across the grip.</summary>
/// <param name="PlaceMm">Place from the top of the grip, mm.</param>
/// <param name="DepthMm">Depth below the board's face, mm.</param>
/// <param name="LeftMm">Wood left between the two kerfs, or between kerf and far face, mm.</param>
/// <param name="Faces">Faces to saw: 2 for matching faces, 1 for a one-sided grip.</param>
/// <param name="OtherFaceDepthMm">How far the face without a hollow lies below the board's face there, mm; 0 for matching faces.</param>
internal sealed record BuildKerf(
    [property: JsonConverter(typeof(Tenths))] double PlaceMm,
    [property: JsonConverter(typeof(Tenths))] double DepthMm,
    [property: JsonConverter(typeof(Tenths))] double LeftMm,
    int Faces,
    [property: JsonConverter(typeof(Tenths))] double OtherFaceDepthMm);

/// <summary>Sanding of one zone.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="Grits">Grits in order, P grades.</param>
/// <param name="RemovesMm">Wood that the sequence takes from each face, mm, at most.</param>
/// <param name="Why">Why it stops there.</param>
/// <param name="Source">Where it comes from.</param>
internal sealed record BuildSanding(
    string Zone, IReadOnlyList<int> Grits, [property: JsonConverter(typeof(Hundredths))] double RemovesMm, string Why, string Source);

/// <summary>What goes on blade, shaft and grip.</summary>
/// <param name="VarnishAreaCm2">Varnished surface, cm².</param>
/// <param name="OilAreaCm2">Oiled surface, cm².</param>
/// <param name="VarnishLitres">Varnish, L.</param>
/// <param name="OilLitres">Oil, L.</param>
/// <param name="ThinnerLitres">Thinner with 0.25 L for the brushes, L.</param>
/// <param name="BuyVarnishLitres">Tin to buy, L.</param>
/// <param name="VarnishDryG">Dry varnish that stays on, g.</param>
/// <param name="OilDryG">Oil that stays in, g.</param>
/// <param name="MaskingLineMm">Where the tape's edge lies, mm from the top of the grip; absent where no two finishes meet.</param>
/// <param name="Coats">Every coat in order of time.</param>
/// <param name="ReadyDay">Day on which the paddle may be used, counted from the first coat.</param>
/// <param name="Notes">How to work, with sources.</param>
internal sealed record BuildFinish(
    [property: JsonConverter(typeof(Tenths))] double VarnishAreaCm2,
    [property: JsonConverter(typeof(Tenths))] double OilAreaCm2,
    [property: JsonConverter(typeof(Thousandths))] double VarnishLitres,
    [property: JsonConverter(typeof(Thousandths))] double OilLitres,
    [property: JsonConverter(typeof(Thousandths))] double ThinnerLitres,
    [property: JsonConverter(typeof(Thousandths))] double BuyVarnishLitres,
    [property: JsonConverter(typeof(Tenths))] double VarnishDryG,
    [property: JsonConverter(typeof(Tenths))] double OilDryG,
    [property: JsonConverter(typeof(Tenths))] double? MaskingLineMm,
    IReadOnlyList<BuildCoat> Coats,
    [property: JsonConverter(typeof(Tenths))] double ReadyDay,
    IReadOnlyList<string> Notes);

/// <summary>One coat.</summary>
/// <param name="Number">Number of the coat of its finish.</param>
/// <param name="Finish">Varnish or oil.</param>
/// <param name="Zone">Where it goes.</param>
/// <param name="ThinnerPercent">Thinner, percent of the coat's volume.</param>
/// <param name="Litres">Finish to pour with its loss, L.</param>
/// <param name="StartDay">Day on which it goes on, counted from the first coat.</param>
/// <param name="WaitDays">Days to wait after it.</param>
internal sealed record BuildCoat(
    int Number,
    string Finish,
    string Zone,
    [property: JsonConverter(typeof(Tenths))] double ThinnerPercent,
    [property: JsonConverter(typeof(Thousandths))] double Litres,
    [property: JsonConverter(typeof(Tenths))] double StartDay,
    [property: JsonConverter(typeof(Tenths))] double WaitDays);

/// <summary>Mass and balance with something added.</summary>
/// <param name="MassG">Mass, g.</param>
/// <param name="BalanceMm">Balance point, mm from the top of the grip.</param>
/// <param name="ShiftMm">How far the balance point moved, mm; positive towards the tip.</param>
internal sealed record BuildLaden(
    [property: JsonConverter(typeof(Tenths))] double MassG,
    [property: JsonConverter(typeof(Tenths))] double BalanceMm,
    [property: JsonConverter(typeof(Tenths))] double ShiftMm);

/// <summary>Glass cloth over the tip on both faces.</summary>
/// <param name="Chosen">Whether it is part of the design, and in its finished figures; otherwise it is offered.</param>
/// <param name="LengthMm">How far it reaches up from the tip, mm.</param>
/// <param name="ClothGM2">Weight of the cloth, g/m².</param>
/// <param name="ClothAreaCm2">Cloth to cut for both faces, cm².</param>
/// <param name="AddedG">Mass that it adds, g.</param>
/// <param name="ResinG">Resin to mix, g.</param>
/// <param name="ThicknessMm">Thickness on each face, mm.</param>
/// <param name="With">The finished paddle with it; the shift is what the cloth alone does.</param>
internal sealed record BuildTip(
    bool Chosen,
    [property: JsonConverter(typeof(Tenths))] double LengthMm,
    [property: JsonConverter(typeof(Tenths))] double ClothGM2,
    [property: JsonConverter(typeof(Tenths))] double ClothAreaCm2,
    [property: JsonConverter(typeof(Tenths))] double AddedG,
    [property: JsonConverter(typeof(Tenths))] double ResinG,
    [property: JsonConverter(typeof(Hundredths))] double ThicknessMm,
    BuildLaden With);
