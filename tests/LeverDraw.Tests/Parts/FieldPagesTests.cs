using LeverDraw.Parts;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Units;

namespace LeverDraw.Tests.Parts;

/// <summary>Pages made from the field lists; LEVERDRAW_ACCEPT=1 writes them anew.</summary>
public sealed class FieldPagesTests
{
    public static TheoryData<string> Kinds => [.. PartKinds.All.Select(k => k.Name)];

    [Fact]
    public void FieldsPage_IsMadeFromTheLists()
    {
        string page = "# Fields\n\nMade from the field lists in `src/LeverDraw.Core/Parts`; a test compares the two. Ranges in millimetres; the command `fields --units in` shows them in inches.\n"
            + "\n## Every profile\n\n" + FieldTable.Markdown(CommonFields.All, LengthUnit.Millimetre)
            + string.Concat(PartKinds.All.Select(k => $"\n## {k.Name}\n\nSheets: {string.Join(", ", k.SheetNames)}.\n\n" + FieldTable.Markdown(k.Fields.Fields, LengthUnit.Millimetre)));
        RepositoryFile.MustEqual("docs/fields.md", page);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Schema_IsMadeFromTheList(string kind) =>
        RepositoryFile.MustEqual($"docs/schema/{kind}.schema.json", JsonSchema.For(PartKinds.All.Single(k => k.Name == kind).Fields));
}
