using LeverDraw.Drafting.Views;
namespace LeverDraw.Parts.AdjustingLever;
internal static class TopView { public static ViewGeometry Of(Lever lever) => throw new NotSupportedException(lever.ToString()); }
