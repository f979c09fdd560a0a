using LeverDraw.Diagnostics;
using LeverDraw.Profiles;

namespace LeverDraw.Parts;

/// <summary>Names and places of fields at odds, for findings.</summary>
internal static class FieldNames
{
    /// <summary><c>'a.b', 'c.d' and 'e.f'</c>.</summary>
    public static string Quoted(ReadOnlySpan<FieldSpec> fields)
    {
        List<string> quoted = [];
        foreach (FieldSpec field in fields)
            quoted.Add("'" + field.Name + "'");
        return quoted.Count == 1 ? quoted[0] : string.Join(", ", quoted.GetRange(0, quoted.Count - 1)) + " and " + quoted[^1];
    }

    /// <summary>Where the first of the fields that the profile states stands.</summary>
    public static SourcePosition Place(IFieldValues values, ReadOnlySpan<FieldSpec> fields)
    {
        foreach (FieldSpec field in fields)
        {
            if (values.IsStated(field))
                return values.PositionOf(field);
        }

        return values.PositionOf(fields[0]);
    }
}
