using Tasks = System.Threading.Tasks;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Work on several views at once, on the processors there are. What comes out does not hang on which was done first.</summary>
internal static class SideBySide
{
    /// <param name="make">Touches nothing that another call changes.</param>
    public static T[] Make<T>(int count, Func<int, T> make)
    {
        var made = new T[count];
        Tasks.Parallel.For(0, count, i => made[i] = make(i));
        return made;
    }
}
