using LeverDraw.Diagnostics;
using LeverDraw.Lookups;
using LeverDraw.Standards;

namespace LeverDraw.Tests.Lookups;

public sealed class ToleranceLookupsTests
{
    // IT8 over 3 to 6 mm is 18 µm, f −10, IT7 12 (two public tables); the inch limits by hand: 3.06/25.4 = 0.120472, 3.078/25.4 = 0.121181,
    // rounded inwards to five decimals, since four would keep 0.0006 of 0.000709 in.
    [Fact]
    public void Fit_DemoHole_GivesLimitsClearanceAndKind()
    {
        Checked<LookupAnswer> answer = Ask.Of("fit", "SIZE", "3.06", "FIT", "H8/f7");
        Assert.Equal([3.06, 3.078], answer.Numbers("hole H8"));
        Assert.Equal([0.12048, 0.12118], answer.Inches("hole H8"));
        Assert.Equal([3.038, 3.05], answer.Numbers("shaft f7"));
        Assert.Equal([0.01], answer.Numbers("least clearance"));
        Assert.Equal([0.04], answer.Numbers("most clearance"));
        Assert.Equal("clearance", answer.Row("kind of fit").Value.Text);
        Assert.All(answer.Value!.Rows, row => Assert.Equal(Certainty.Solid, row.HowSure));
        Assert.Equal(["ISO 286-1:2010"], answer.Value.Sources.Select(s => s.Name).Distinct());
    }

    // 9/64 in is 3.571875 mm; the same zones, so 0.01 to 0.04 again.
    [Fact]
    public void Fit_SizeInFractions_IsTheSameAsInMillimetres()
    {
        Checked<LookupAnswer> answer = Ask.Of("fit", "SIZE", "9/64 in", "FIT", "H8/f7");
        Assert.Equal([3.571875, 3.589875], answer.Numbers("hole H8"));
        Assert.Equal([0.01], answer.Numbers("least clearance"));
    }

    // 50 H7/s6 is −59 to −18 µm (two public tables).
    [Fact]
    public void Fit_Interference_IsNegativeAndSaysSo()
    {
        Checked<LookupAnswer> answer = Ask.Of("fit", "SIZE", "50", "FIT", "H7/s6");
        Assert.Equal([-0.059], answer.Numbers("least clearance"));
        Assert.Equal([-0.018], answer.Numbers("most clearance"));
        Assert.Equal("interference", answer.Row("kind of fit").Value.Text);
        Assert.Contains("interference", answer.Row("most clearance").Note, StringComparison.Ordinal);
    }

    // 40 js7 is ±12.5 µm (three public tables): the half micrometre is kept.
    [Fact]
    public void Zone_OddToleranceHalved_KeepsTheHalfMicrometre() =>
        Assert.Equal([39.9875, 40.0125], Ask.Of("zone", "SIZE", "40", "ZONE", "js7").Numbers("shaft js7"));

    // M6 of 250 to 315 mm rests on one table (reference 01d), its neighbours on three.
    [Theory]
    [InlineData("300", "M6", Certainty.Thin)]
    [InlineData("250", "M6", Certainty.Solid)]
    [InlineData("300", "M7", Certainty.Solid)]
    public void Zone_HowSure_IsOfTheVeryCell(string size, string zone, Certainty howSure) =>
        Assert.Equal(howSure, Ask.Of("zone", "SIZE", size, "ZONE", zone).Row("hole " + zone).HowSure);

    // ISO 2768-1 class m at 14 mm: 0.2, radius 1, angle 30' (three, three and two public tables).
    [Fact]
    public void General_LeftOpen_GivesLengthRadiusAndAngle()
    {
        Checked<LookupAnswer> answer = Ask.Of("general", "SIZE", "14", "CLASS", "m");
        Assert.Equal([0.2], answer.Numbers("on a length"));
        // 0.2/25.4 = 0.0078740: cut, never rounded up.
        Assert.Equal([0.00787], answer.Inches("on a length"));
        Assert.Equal([1], answer.Numbers("on a radius or chamfer"));
        Assert.Equal([0.5], answer.Numbers("on an angle with this shorter side"));
        Assert.Equal("±0° 30'", answer.Row("on an angle with this shorter side").Value.Text);
    }

    [Fact]
    public void General_RadiusOverThirty_IsLessSure()
    {
        Assert.Equal(Certainty.Solid, Ask.Of("general", "SIZE", "30", "CLASS", "c", "--of", "radius").Row("on a radius or chamfer").HowSure);
        Assert.Equal(Certainty.Mixed, Ask.Of("general", "SIZE", "30.1", "CLASS", "c", "--of", "radius").Row("on a radius or chamfer").HowSure);
    }

    [Fact]
    public void General_LengthAsked_OthersAreLeftOut() =>
        Assert.Equal("on a length", Assert.Single(Ask.Of("general", "SIZE", "14", "CLASS", "m", "--of", "length").Value!.Rows).Name);

    [Theory]
    [InlineData("zone", "SIZE", "600", "ZONE", "H8", "LD601", "over 0 mm up to 500 mm")]
    [InlineData("zone", "SIZE", "3.06", "ZONE", "H19", "LD601", "grade 1 to 18")]
    [InlineData("zone", "SIZE", "0", "ZONE", "H8", "LD208", "above zero")]
    [InlineData("zone", "SIZE", "9/64", "ZONE", "H8", "LD208", "add 'in'")]
    [InlineData("zone", "SIZE", "1e3", "ZONE", "H8", "LD208", "exponent")]
    [InlineData("zone", "SIZE", "99999999999999999999 in", "ZONE", "H8", "LD208", "larger than any table")]
    [InlineData("fit", "SIZE", "3.06", "FIT", "f7/H8", "LD601", "capital letter (hole) comes first")]
    [InlineData("general", "SIZE", "14", "CLASS", "x", "LD601", "f, m, c and v")]
    [InlineData("general", "SIZE", "2500", "CLASS", "f", "LD601", "2000 mm", "--of", "length")]
    [InlineData("general", "SIZE", "14", "CLASS", "m", "LD602", "Did you mean 'radius'?", "--of", "radus")]
    public void Find_OutsideOrUnreadable_IsRefusedWithTheRange(
        string lookup, string a, string aValue, string b, string bValue, string code, string told, string? more = null, string? moreValue = null) =>
        Ask.Of(lookup, more is null ? [a, aValue, b, bValue] : [a, aValue, b, bValue, more, moreValue!]).MustRefuse(code, told);

    [Fact]
    public void Find_SeveralFaults_AreToldTogether() =>
        Assert.Equal(["LD208", "LD601"], Ask.Of("zone", "SIZE", "three", "ZONE", "8H").Diagnostics.Select(d => d.Code));
}
