using System.Buffers;
using System.Reflection;
using System.Text.Encodings.Web;
using System.Text.Json;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Designs;

/// <summary>
/// The one spelling of a design: a JSON array of its values in a fixed order, nulls at the end left off. Names would cost more than the
/// values; no default is left out, so that a code keeps its shape when a default changes.
/// </summary>
internal static class CanonicalDesign
{
    // Written and read in this order. Members added to the contract later go at the end: older codes then still read, with null in their place.
    private static readonly Member[] Members =
    [
        .. """
            HandSpacingMm FreeboardMm OverallLengthMm
            Blade.Family Blade.LengthMm Blade.WidthMm Blade.WidestAt Blade.Fullness
            Blade.ThroatThicknessMm Blade.MiddleThicknessMm Blade.TipThicknessMm Blade.EdgeThicknessMm
            Shaft.WidthMm Shaft.ThicknessMm Shaft.UpperWidthMm Shaft.UpperThicknessMm Shaft.BendDegrees
            Grip.Style Grip.WidthMm Grip.LengthMm Grip.ThicknessMm Grip.Faces Grip.HollowDepthMm
            Wood.Species Wood.MoisturePercent Wood.SlopeOfGrain Wood.Treatment
            Construction.Kind
            Aims.BalanceAt Aims.BalanceToleranceMm Aims.MinimumSafetyFactor
            Loads.BodyMassKg Loads.TouringStrokeN Loads.HardStrokeN Loads.BraceN Loads.PushOffAxialN Loads.PushOffSideN Loads.EdgePressN
            Drawing.Units
            Label Wood.MeasuredDensityKgM3 Wood.MeasuredModulusMPa Aims.BenchFlexMm.Min Aims.BenchFlexMm.Max Aims.MaximumMassG Blade.Offsets
            Loads.Duty Finish.Blade Finish.BladeCoats Finish.Shaft Finish.ShaftCoats Finish.TipReinforcement SolvedBefore Wood.BoardThicknessMm
            Construction.IsMirrored Construction.Adhesive Construction.Strips
            Construction.TipPiece.Species Construction.TipPiece.LengthMm Construction.Facing.Species Construction.Facing.ThicknessMm
            """.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(path => new Member(path)),
    ];

    // A bit for each of the nine sizes is the largest whole number in a code.
    private const int MostCount = (1 << 9) - 1;

    // Offsets and strips are the only lists within the list.
    private static readonly JsonReaderOptions Reading = new() { MaxDepth = 2 };

    private static readonly JsonWriterOptions Writing = new()
    {
        // The text is packed, never shown: only what JSON itself demands is escaped.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        SkipValidation = true,
    };

    internal static byte[] Write(DesignRequest design)
    {
        var values = Array.ConvertAll(Members, member => member.Of(design));
        var buffer = new ArrayBufferWriter<byte>(512);
        using var json = new Utf8JsonWriter(buffer, Writing);
        json.WriteStartArray();
        foreach (var value in values.AsSpan(0, 1 + Array.FindLastIndex(values, value => value is not null))) Write(json, value);
        json.WriteEndArray();
        json.Flush();
        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>Reads a canonical text; null when it is not one.</summary>
    internal static DesignRequest? Read(ReadOnlySpan<byte> text)
    {
        try
        {
            var json = new Utf8JsonReader(text, Reading);
            Expect(json.Read() && json.TokenType == JsonTokenType.StartArray);
            var design = new DesignRequest
            {
                Blade = new(),
                Shaft = new(),
                Grip = new(),
                Wood = new(),
                Finish = new(),
                Construction = new(),
                Aims = new() { BenchFlexMm = new() },
                Loads = new(),
                Drawing = new(),
            };
            Expect(json.Read());
            foreach (var member in Members)
            {
                if (json.TokenType == JsonTokenType.EndArray) break;
                if (json.TokenType != JsonTokenType.Null) member.Set(design, Value(ref json, member.Type));
                Expect(json.Read());
            }

            // A value more than this version knows was written by a later one; to drop it would be to build another paddle.
            return json.TokenType == JsonTokenType.EndArray && !json.Read() ? design : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static void Write(Utf8JsonWriter json, object? value)
    {
        switch (value)
        {
            case null:
                json.WriteNullValue();
                break;
            case string text:
                json.WriteStringValue(text);
                break;
            case double number:
                json.WriteNumberValue(number + 0.0); // no negative zero
                break;
            case int count:
                json.WriteNumberValue(count);
                break;
            case bool flag:
                json.WriteNumberValue(flag ? 1 : 0);
                break;
            case IReadOnlyList<OffsetRequest> offsets:
                WritePairs(json, offsets.SelectMany(offset => new object?[] { offset.XMm, offset.HalfBreadthMm }));
                break;
            case IReadOnlyList<StripRequest> strips:
                WritePairs(json, strips.SelectMany(strip => new object?[] { strip.Species, strip.WidthMm }));
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(value), value, "No kind of value that a code holds.");
        }
    }

    private static void WritePairs(Utf8JsonWriter json, IEnumerable<object?> values)
    {
        json.WriteStartArray();
        foreach (var value in values) Write(json, value);
        json.WriteEndArray();
    }

    private static object Value(ref Utf8JsonReader json, Type type)
    {
        if (type == typeof(string)) return Text(ref json);
        if (type == typeof(double)) return Number(ref json);
        if (type == typeof(int)) return Count(ref json);
        if (type == typeof(bool)) return Count(ref json) is var flag && flag <= 1 ? flag == 1 : throw new JsonException();
        Expect(json.TokenType == JsonTokenType.StartArray);
        return type == typeof(IReadOnlyList<OffsetRequest>) ? Offsets(ref json) : Strips(ref json);
    }

    // The lists within the list hold pairs, and the second of each is a number.
    private static List<OffsetRequest> Offsets(ref Utf8JsonReader json)
    {
        var offsets = new List<OffsetRequest>();
        while (json.Read() && json.TokenType != JsonTokenType.EndArray)
        {
            var x = Number(ref json);
            Expect(json.Read());
            offsets.Add(new() { XMm = x, HalfBreadthMm = Number(ref json) });
        }

        return offsets;
    }

    private static List<StripRequest> Strips(ref Utf8JsonReader json)
    {
        var strips = new List<StripRequest>();
        while (json.Read() && json.TokenType != JsonTokenType.EndArray)
        {
            var species = Text(ref json);
            Expect(json.Read());
            strips.Add(new() { Species = species, WidthMm = Number(ref json) });
        }

        return strips;
    }

    private static double Number(ref Utf8JsonReader json)
    {
        Expect(json.TokenType == JsonTokenType.Number);
        return json.GetDouble();
    }

    // Counts and sets are whole, small and not negative; anything else was not written here.
    private static int Count(ref Utf8JsonReader json)
    {
        var value = Number(ref json);
        Expect(value is >= 0 and <= MostCount && value == Math.Floor(value));
        return (int)value;
    }

    // Bytes that are no UTF-8 surface here and not while the tokens are read.
    private static string Text(ref Utf8JsonReader json)
    {
        Expect(json.TokenType == JsonTokenType.String);
        try
        {
            return json.GetString()!;
        }
        catch (InvalidOperationException notText)
        {
            throw new JsonException("Not a text.", notText);
        }
    }

    private static void Expect(bool holds)
    {
        if (!holds) throw new JsonException();
    }

    // A value of a request by its path. A part that no code of that age names is made when its first value is read.
    private sealed class Member
    {
        private const BindingFlags Any = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;
        private readonly PropertyInfo[] path;
        private readonly MethodInvoker[] getters;

        internal Member(string names)
        {
            var type = typeof(DesignRequest);
            path = Array.ConvertAll(names.Split('.'), name =>
            {
                var step = type.GetProperty(name, Any) ?? throw new ArgumentException($"{type.Name} has no {name}.", nameof(names));
                type = step.PropertyType;
                return step;
            });
            getters = Array.ConvertAll(path, step => MethodInvoker.Create(step.GetMethod!));
            Type = Nullable.GetUnderlyingType(type) ?? type;
        }

        internal Type Type { get; }

        internal object? Of(DesignRequest design)
        {
            object? value = design;
            foreach (var getter in getters) value = value is null ? null : getter.Invoke(value);
            return value;
        }

        internal void Set(DesignRequest design, object value)
        {
            object part = design;
            foreach (var step in path.AsSpan(0, path.Length - 1))
            {
                var inner = step.GetValue(part);
                if (inner is null) step.SetValue(part, inner = Activator.CreateInstance(step.PropertyType)!);
                part = inner;
            }

            path[^1].SetValue(part, value);
        }
    }
}
