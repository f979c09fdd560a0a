using System.Reflection;
using LeverDraw.Parts.AdjustingLever.Foundry;

namespace LeverDraw.Tests.Parts.AdjustingLever.Foundry;

/// <summary>A sheet takes outline and contraction flag from one state; these hold that no code outside can make a state, or change one, so that the two disagree.</summary>
public sealed class FoundryStateTests
{
    private static readonly Type[] Closed = [typeof(CastingLever), typeof(PatternLever), typeof(MasterPatternLever), typeof(ContractionFlag)];

    [Fact]
    public void States_AreThreeAndSealed() =>
        Assert.Equal(Closed.Take(3).Select(t => t.Name).Order(), typeof(FoundryState).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(FoundryState)) && t.IsSealed).Select(t => t.Name).Order());

    [Fact]
    public void States_HaveNoOpenConstructorAndNothingToSet()
    {
        foreach (Type type in Closed)
        {
            Assert.Empty(type.GetConstructors());
            Assert.DoesNotContain(type.GetProperties(), p => p.SetMethod is not null);
        }
    }

    /// <summary>An abstract member that is internal cannot be overridden elsewhere: so nobody else can derive a state.</summary>
    [Fact]
    public void State_HasAnAbstractMemberNobodyElseCanGive() =>
        Assert.Contains(typeof(FoundryState).GetProperties(BindingFlags.Instance | BindingFlags.NonPublic), p => p.GetMethod is { IsAbstract: true, IsAssembly: true });

    /// <summary>A lever with contraction in it is not handed out: it could be drawn as a finished one, without a flag.</summary>
    [Fact]
    public void Enlarged_OutlinesOfALever_AreNotHandedOut()
    {
        foreach (Type type in (Type[])[typeof(PatternLever), typeof(MasterPatternLever)])
            Assert.DoesNotContain(type.GetProperties(), p => p.PropertyType == typeof(LeverDraw.Parts.AdjustingLever.Lever));
    }
}
