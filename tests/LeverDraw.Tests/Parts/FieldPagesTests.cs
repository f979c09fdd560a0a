using LeverDraw.Parts;
using LeverDraw.Pipeline;
using LeverDraw.Profiles;
using LeverDraw.Tests.Support;
using LeverDraw.Units;

namespace LeverDraw.Tests.Parts;

/// <summary>Pages made from the field lists; LEVERDRAW_ACCEPT=1 writes them anew.</summary>
public sealed class FieldPagesTests
{
    public static TheoryData<string> Kinds => [.. ProfileKinds.All.Select(k => k.Name)];

    [Fact]
    public void FieldsPage_IsMadeFromTheLists()
    {
        string page = "# Fields\n\nMade from the field lists in `src/LeverDraw.Core/Parts` and `src/LeverDraw.Core/Mechanism`; a test compares the two. Ranges in millimetres; the command `fields --units in` shows them in inches.\n"
            + "\n## Every profile\n\n" + FieldTable.Markdown(CommonFields.OfFile, LengthUnit.Millimetre)
            + "\n## Every profile of a part to be made\n\n" + FieldTable.Markdown(CommonFields.OfPart, LengthUnit.Millimetre)
            + string.Concat(ProfileKinds.All.Select(k => $"\n## {k.Name}\n\n{(k.SheetNames.IsEmpty ? "No sheet of its own." : $"Sheets: {string.Join(", ", k.SheetNames)}.")}\n\n" + FieldTable.Markdown(k.Fields.Fields, LengthUnit.Millimetre)));
        RepositoryFile.MustEqual("docs/fields.md", page);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Schema_IsMadeFromTheList(string kind) =>
        RepositoryFile.MustEqual($"docs/schema/{kind}.schema.json", JsonSchema.For(ProfileKinds.All.Single(k => k.Name == kind).Fields));
}
