using LeverDraw.Drafting.Views;
using Tasks = System.Threading.Tasks;

namespace LeverDraw.Drafting.Sheets;

/// <summary>Work on several views at once, on the processors there are. What comes out does not hang on which was done first.</summary>
internal static class SideBySide
{
    /// <summary>What section lining makes of a view's work, in annotations: its callout is asked about against every line (own, by measuring).</summary>
    private const int Lining = 12;

    /// <param name="work">How much there is to do for each, roughly: the most first, one at a time, so that no processor is left with two large ones.</param>
    /// <param name="make">Touches nothing that another call changes.</param>
    public static T[] Make<T>(int count, Func<int, int> work, Func<int, T> make)
    {
        var made = new T[count];
        int[] order = [.. Enumerable.Range(0, count).OrderByDescending(work)];
        int next = -1;
        // The pool keeps as many threads ready as there are processors; more than those would only take time from each other.
        ThreadPool.GetMinThreads(out int processors, out _);
        int workers = Math.Min(count, processors);
        Tasks.Parallel.For(0, workers, new Tasks.ParallelOptions { MaxDegreeOfParallelism = workers }, _ =>
        {
            for (int at = Interlocked.Increment(ref next); at < count; at = Interlocked.Increment(ref next))
                made[order[at]] = make(order[at]);
        });
        return made;
    }

    /// <summary>About how much there is to do for a view.</summary>
    public static int WorkOn(ViewSource view) => view.Annotations.Length + (view.Hatching.IsEmpty ? 0 : Lining);
}
