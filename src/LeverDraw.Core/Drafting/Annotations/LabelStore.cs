using System.Runtime.CompilerServices;

namespace LeverDraw.Drafting.Annotations;

/// <summary>Labels measured once for all views and scales of a sheet. Lives as long as one composing.</summary>
internal sealed class LabelStore
{
    private readonly Dictionary<Key, LabelBox> _boxes = [];

    /// <summary>On a dimension line, without what has a place of its own there.</summary>
    public LabelBox OnLine(Label label, DraftingStyle style) => Of(label, style, Form.OnLine);

    /// <summary>At the end of a leader, the second unit under the first.</summary>
    public LabelBox Stacked(Label label, DraftingStyle style) => Of(label, style, Form.Stacked);

    public LabelBox Plain(Label label, DraftingStyle style) => Of(label, style, Form.Plain);

    private LabelBox Of(Label label, DraftingStyle style, Form form)
    {
        var key = new Key(label, style, form);
        // Views are placed side by side; a measured label is the same whoever measured it.
        lock (_boxes)
        {
            if (_boxes.TryGetValue(key, out LabelBox? known))
                return known;
        }

        LabelBox box = form switch
        {
            Form.OnLine => new LabelBox(label.Bare(), style, onLine: true),
            Form.Stacked => new LabelBox(label.Stacked(), style),
            _ => new LabelBox(label, style),
        };
        lock (_boxes)
            _boxes[key] = box;
        return box;
    }

    private enum Form
    {
        Plain,
        OnLine,
        Stacked,
    }

    /// <summary>The very label and style: to compare what they say would take longer than to measure them.</summary>
    private readonly struct Key(Label label, DraftingStyle style, Form form) : IEquatable<Key>
    {
        private readonly Label _label = label;
        private readonly DraftingStyle _style = style;
        private readonly Form _form = form;

        public bool Equals(Key other) => ReferenceEquals(_label, other._label) && ReferenceEquals(_style, other._style) && _form == other._form;

        public override bool Equals(object? obj) => obj is Key other && Equals(other);

        public override int GetHashCode() => HashCode.Combine(RuntimeHelpers.GetHashCode(_label), RuntimeHelpers.GetHashCode(_style), (int)_form);
    }
}
