namespace LeverDraw.Drafting.Sheets;

/// <summary>Under what a placed view is kept.</summary>
/// <param name="View">Its id.</param>
/// <param name="Thrift">Price of width at which it was placed.</param>
internal readonly record struct ViewKey(string View, double Factor, DraftingStyle Style, double Thrift);
