using CsCheck;
using LeverDraw.Drafting.Annotations;

namespace LeverDraw.Tests.Drafting.Annotations;

public class SpreadRowProperties
{
    [Fact]
    public void Apart_AnyRow_KeepsOrderAndRoomAndMovesNothingWithoutNeed() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[0.5, 6]).Array[1, 12].Sample(row =>
        {
            double[] wanted = [.. row.Select(r => r.Item1).Order()];
            double[] room = [.. row.Select(r => r.Item2)];
            double[] placed = SpreadRow.Apart(wanted, room);
            bool free = true;
            for (int i = 1; i < placed.Length; i++)
            {
                double least = (room[i - 1] + room[i]) / 2;
                Assert.True(placed[i] - placed[i - 1] >= least - 1e-9);
                free &= wanted[i] - wanted[i - 1] >= least;
            }

            Assert.Equal(wanted.Sum(), placed.Sum(), 1e-9);
            if (free)
                Assert.Equal(wanted, placed.Select(p => p), (a, b) => Math.Abs(a - b) < 1e-9);
        });
}
