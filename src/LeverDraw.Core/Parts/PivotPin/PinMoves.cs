namespace LeverDraw.Parts.PivotPin;

/// <summary>Numbers a pin's series or a rule gives, set by themselves; millimetres, null where the profile's own resolution holds. For asking what a sheet fixes.</summary>
/// <param name="NamedEnd">Diameter of the end the series names.</param>
/// <param name="TaperRate">Of a tapered pin.</param>
/// <param name="CrownRadius">Of a crowned one.</param>
/// <param name="GaugePlane">Where it is gauged, which stays where it is drawn: the plane shapes nothing.</param>
internal sealed record PinMoves(double NamedEnd, double? TaperRate, double? CrownRadius, double GaugePlane);
