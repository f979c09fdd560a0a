using LeverDraw.Drafting.Views;
namespace LeverDraw.Parts.AdjustingLever;
internal static class TongueView { public static ViewGeometry Of(Lever lever) => throw new NotSupportedException(lever.ToString()); }
