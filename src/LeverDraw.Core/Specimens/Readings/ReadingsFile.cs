using System.Collections.Immutable;
using LeverDraw.Diagnostics;
using LeverDraw.Profiles;
using LeverDraw.Specimens.Measuring;

namespace LeverDraw.Specimens.Readings;

/// <summary>Reads a file of readings, CSV or TOML by its name's ending, and tells every bad row at once. Never throws for what a file holds.</summary>
public static class ReadingsFile
{
    public static Checked<ReadingSet> Read(string path, IProfileSource source)
    {
        FileFaults faults = new(path);
        if (!Opened(path, source, faults, out SourceMap? text))
            return Checked<ReadingSet>.Bad(faults.All());
        IEnumerable<RawReading> rows = path.EndsWith(".toml", StringComparison.OrdinalIgnoreCase) ? TomlRows.Read(text!, faults) : CsvRows.Read(text!, faults);
        ImmutableArray<Reading> readings = [.. rows.SelectMany(r => Readings(r, text!, faults))];
        if (readings.IsEmpty && !faults.All().Any())
            faults.Add(DiagnosticCatalogue.NoReadings, null, null);
        List<Diagnostic> told = [];
        readings = Slips.Marked(readings, told);
        told.AddRange(Notes(readings));
        return Checked<ReadingSet>.From([.. faults.All().Concat(told).OrderBy(d => d.Position?.Line ?? 0).ThenBy(d => d.Position?.Column ?? 0)], () => new ReadingSet(path, readings));
    }

    private static bool Opened(string path, IProfileSource source, FileFaults faults, out SourceMap? text)
    {
        text = null;
        switch (source.Open(path))
        {
            case ProfileFile.Found found:
                if (ProfileText.Decode(found.Bytes.Span, path, faults) is null)
                    return false;
                text = faults.Source;
                return true;
            case ProfileFile.IsDirectory:
                faults.Add(DiagnosticCatalogue.FileIsDirectory, null, null, path);
                return false;
            case ProfileFile.TooLarge large:
                faults.Add(DiagnosticCatalogue.FileTooLarge, null, null, path, large.Bytes, ProfileFile.LargestBytes);
                return false;
            case ProfileFile.NotReadable:
                faults.Add(DiagnosticCatalogue.FileNotReadable, null, null, path);
                return false;
            default:
                faults.Add(DiagnosticCatalogue.FileMissing, null, null, path);
                return false;
        }
    }

    private static IEnumerable<Reading> Readings(RawReading row, SourceMap source, FileFaults faults)
    {
        bool good = true;
        foreach ((string name, RawCell cell) in new[] { ("specimen", row.Specimen), ("field", row.Field), ("value", row.Value) })
        {
            if (!cell.IsEmpty)
                continue;
            // An empty value is a blank of the form that was not filled in, not a fault, as long as the row says nothing else.
            if (name == "value" && row.Note.IsEmpty && row.Altered.IsEmpty)
                return [];
            faults.Add(DiagnosticCatalogue.ReadingEmpty, cell.Span, null, name);
            good = false;
        }

        Measurand? measurand = row.Field.IsEmpty ? null : Known(row.Field, faults);
        Instrument? instrument = InstrumentOf(row.Instrument, measurand, faults);
        ReadAt? at = Where(row.Where, faults);
        bool? altered = Flag(row.Altered, faults);
        var readings = new List<Reading>();
        if (measurand is null || row.Value.IsEmpty)
            return [];
        foreach (RawCell one in Repeats(row.Value))
        {
            if (ReadingValue.Read(measurand, one.Text, row.Unit.Text.Trim(), one.Span, faults) is not { } value || instrument is null || at is null || altered is null || !good)
                continue;
            readings.Add(new Reading(row.Specimen.Text.Trim(), measurand, value.Number, value.Word, instrument, at.Value, altered.Value, row.Note.Text, source.Position(one.Span)));
        }

        return readings;
    }

    private static Measurand? Known(RawCell cell, FileFaults faults)
    {
        string name = cell.Text.Trim();
        if (Measurands.Find(name) is { } known)
            return known;
        string? near = NearestName.Of(name, Measurands.All.Select(m => m.Name));
        faults.AddWithHint(DiagnosticCatalogue.ReadingFieldUnknown, cell.Span, name, near is null ? null : "Did you mean '" + near + "'?", FieldReader.Shown(name));
        return null;
    }

    private static Instrument? InstrumentOf(RawCell cell, Measurand? measurand, FileFaults faults)
    {
        if (cell.IsEmpty)
            return measurand?.Kind switch
            {
                ReadingKind.Word or ReadingKind.Taper => Instruments.Eye,
                ReadingKind.Angle => Instruments.Protractor,
                _ => Instruments.Caliper,
            };
        string name = cell.Text.Trim();
        if (Instruments.All.FirstOrDefault(i => i.Name == name) is { } known)
            return known;
        string? near = NearestName.Of(name, Instruments.All.Select(i => i.Name));
        faults.AddWithHint(DiagnosticCatalogue.ReadingInstrument, cell.Span, null, near is null ? null : "Did you mean '" + near + "'?", FieldReader.Shown(name), string.Join(", ", Instruments.All.Select(i => i.Name)));
        return null;
    }

    private static ReadAt? Where(RawCell cell, FileFaults faults)
    {
        switch (cell.Text.Trim())
        {
            case "":
                return ReadAt.Unsaid;
            case "worn":
                return ReadAt.Worn;
            case "witness":
                return ReadAt.Witness;
            default:
                faults.Add(DiagnosticCatalogue.ReadingWhere, cell.Span, null, FieldReader.Shown(cell.Text));
                return null;
        }
    }

    private static bool? Flag(RawCell cell, FileFaults faults)
    {
        switch (cell.Text.Trim().ToLowerInvariant())
        {
            case "" or "no" or "n":
                return false;
            case "yes" or "y":
                return true;
            default:
                faults.Add(DiagnosticCatalogue.ReadingAltered, cell.Span, null, FieldReader.Shown(cell.Text));
                return null;
        }
    }

    /// <summary>Repeated readings stand in one cell, parted by ';' or '|'.</summary>
    private static IEnumerable<RawCell> Repeats(RawCell value)
    {
        if (value.Text.AsSpan().IndexOfAny(';', '|') < 0)
            return [value];
        return [.. value.Text.Split(';', '|').Select(t => t.Trim()).Where(t => t.Length > 0).Select(t => new RawCell(t, value.Span))];
    }

    private static IEnumerable<Diagnostic> Notes(ImmutableArray<Reading> readings)
    {
        foreach (Reading reading in readings.Where(r => r.Altered))
            yield return DiagnosticCatalogue.ReadingAlteredLeftOut.At(reading.Position, reading.Measurand.Name, reading.Measurand.Name, reading.Specimen);
        foreach (Reading reading in readings.Where(r => r.Counts && r.OfCorrection > 0))
            yield return DiagnosticCatalogue.SmallBore.At(reading.Position, reading.Measurand.Name, reading.Measurand.Text(reading.Corrected - reading.Value, 3), reading.Measurand.Text(reading.Value, 3));
        foreach (IGrouping<(string, Measurand, ReadAt), Reading> same in readings.Where(r => r.Counts && r.Word is null).GroupBy(r => (r.Specimen, r.Measurand, r.At)).Where(g => g.Count() > 1))
        {
            Reading first = same.First();
            double range = same.Max(r => r.Value) - same.Min(r => r.Value);
            // Two readings of one thing may differ by both their errors.
            if (range > 2 * Math.Sqrt(3) * same.Max(r => r.Instrument.Common(first.Measurand.Kind == ReadingKind.Angle, r.Value)) + 1e-9)
            {
                Diagnostic apart = DiagnosticCatalogue.ReadingsApart.At(same.Last().Position, first.Measurand.Name, same.Count(), first.Measurand.Name, first.Specimen, first.Measurand.Text(range, 3), first.Instrument.Name);
                yield return first.Measurand.Wear == WearSide.None ? apart with { Suggestion = "This size does not wear, so one of them is likely a mistake: read it again. Until then their mean is taken." } : apart;
            }
        }
    }
}
