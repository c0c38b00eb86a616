using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Paddle.Design.Request;

namespace PaddleApi.Contracts.Designs;

/// <summary>
/// The one spelling of a design: a JSON array of its values in a fixed order, nulls at the end left off. Names would cost more than the
/// values; no default is left out, so that a code keeps its shape when a default changes. Members added to the contract later go at the
/// end: older codes then still read, with null in their place.
/// </summary>
internal static class CanonicalDesign
{
    // A bit for each of the nine sizes is the largest whole number in a code.
    private const int MostCount = (1 << 9) - 1;

    // Offsets and strips are the only lists within the list.
    private const int Depth = 2;

    private static readonly JsonWriterOptions Writing = new()
    {
        // The text is packed, never shown: only what JSON itself demands is escaped.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        SkipValidation = true,
    };

    internal static byte[] Write(DesignRequest design)
    {
        var buffer = new ArrayBufferWriter<byte>(512);
        using var json = new Utf8JsonWriter(buffer, Writing);
        var list = new ValueWriter(json);
        var (blade, shaft, grip, wood) = (design.Blade!, design.Shaft!, design.Grip!, design.Wood!);
        var (aims, loads) = (design.Aims!, design.Loads!);
        json.WriteStartArray();
        list.Add(design.HandSpacingMm);
        list.Add(design.FreeboardMm);
        list.Add(design.OverallLengthMm);
        list.Add(blade.Family);
        list.Add(blade.LengthMm);
        list.Add(blade.WidthMm);
        list.Add(blade.WidestAt);
        list.Add(blade.Fullness);
        list.Add(blade.ThroatThicknessMm);
        list.Add(blade.MiddleThicknessMm);
        list.Add(blade.TipThicknessMm);
        list.Add(blade.EdgeThicknessMm);
        list.Add(shaft.WidthMm);
        list.Add(shaft.ThicknessMm);
        list.Add(shaft.UpperWidthMm);
        list.Add(shaft.UpperThicknessMm);
        list.Add(shaft.BendDegrees);
        list.Add(grip.Style);
        list.Add(grip.WidthMm);
        list.Add(grip.LengthMm);
        list.Add(grip.ThicknessMm);
        list.Add(grip.Faces);
        list.Add(grip.HollowDepthMm);
        list.Add(wood.Species);
        list.Add(wood.MoisturePercent);
        list.Add(wood.SlopeOfGrain);
        list.Add(wood.Treatment);
        list.Add(design.Construction!.Kind);
        list.Add(aims.BalanceAt);
        list.Add(aims.BalanceToleranceMm);
        list.Add(aims.MinimumSafetyFactor);
        list.Add(loads.BodyMassKg);
        list.Add(loads.TouringStrokeN);
        list.Add(loads.HardStrokeN);
        list.Add(loads.BraceN);
        list.Add(loads.PushOffAxialN);
        list.Add(loads.PushOffSideN);
        list.Add(loads.EdgePressN);
        list.Add(design.Drawing!.Units);
        // Seldom given: at the end, where nulls cost nothing.
        list.Add(design.Label);
        list.Add(wood.MeasuredDensityKgM3);
        list.Add(wood.MeasuredModulusMPa);
        list.Add(aims.BenchFlexMm?.Min);
        list.Add(aims.BenchFlexMm?.Max);
        list.Add(aims.MaximumMassG);
        list.Add(blade.Offsets);
        // Since engine 0.2: a code without them takes today's defaults, its sizes stay.
        list.Add(loads.Duty);
        list.Add(design.Finish!.Blade);
        list.Add(design.Finish.BladeCoats);
        list.Add(design.Finish.Shaft);
        list.Add(design.Finish.ShaftCoats);
        list.Add(design.Finish.TipReinforcement);
        list.Add(design.SolvedBefore);
        list.Add(wood.BoardThicknessMm);
        // Since engine 0.3: of a glued-up paddle only.
        list.Add(design.Construction.IsMirrored is { } isMirrored ? isMirrored ? 1 : 0 : null);
        list.Add(design.Construction.Adhesive);
        list.Add(design.Construction.Strips);
        // Since engine 0.4: what is glued onto the strips.
        list.Add(design.Construction.TipPiece?.Species);
        list.Add(design.Construction.TipPiece?.LengthMm);
        list.Add(design.Construction.Facing?.Species);
        list.Add(design.Construction.Facing?.ThicknessMm);
        json.WriteEndArray();
        json.Flush();
        return buffer.WrittenSpan.ToArray();
    }

    /// <summary>Reads a canonical text; null when it is not one.</summary>
    internal static DesignRequest? Read(ReadOnlySpan<byte> text)
    {
        try
        {
            var list = new ValueReader(text, Depth);
            var request = Read(ref list);
            return list.IsAtEnd() ? request : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    // The members of an initialiser are set in the order they stand in: it must be the order of Write.
    private static DesignRequest Read(ref ValueReader list)
    {
        var (spacing, freeboard, overall) = (list.Number(), list.Number(), list.Number());
        var blade = new BladeRequest
        {
            Family = list.Text(),
            LengthMm = list.Number(),
            WidthMm = list.Number(),
            WidestAt = list.Number(),
            Fullness = list.Number(),
            ThroatThicknessMm = list.Number(),
            MiddleThicknessMm = list.Number(),
            TipThicknessMm = list.Number(),
            EdgeThicknessMm = list.Number(),
        };
        var shaft = new ShaftRequest
        {
            WidthMm = list.Number(),
            ThicknessMm = list.Number(),
            UpperWidthMm = list.Number(),
            UpperThicknessMm = list.Number(),
            BendDegrees = list.Number(),
        };
        var grip = new GripRequest
        {
            Style = list.Text(),
            WidthMm = list.Number(),
            LengthMm = list.Number(),
            ThicknessMm = list.Number(),
            Faces = list.Text(),
            HollowDepthMm = list.Number(),
        };
        var wood = new WoodRequest
        {
            Species = list.Text(),
            MoisturePercent = list.Number(),
            SlopeOfGrain = list.Number(),
            Treatment = list.Text(),
        };
        var construction = new ConstructionRequest { Kind = list.Text() };
        var aims = new AimsRequest { BalanceAt = list.Text(), BalanceToleranceMm = list.Number(), MinimumSafetyFactor = list.Number() };
        var loads = new LoadsRequest
        {
            BodyMassKg = list.Number(),
            TouringStrokeN = list.Number(),
            HardStrokeN = list.Number(),
            BraceN = list.Number(),
            PushOffAxialN = list.Number(),
            PushOffSideN = list.Number(),
            EdgePressN = list.Number(),
        };
        var drawing = new DrawingRequest { Units = list.Text() };
        var label = list.Text();
        var measured = (Density: list.Number(), Modulus: list.Number());
        var flex = new BenchFlexRequest { Min = list.Number(), Max = list.Number() };
        var maximumMass = list.Number();
        var offsets = list.Offsets();
        var duty = list.Text();
        var finish = new FinishRequest
        {
            Blade = list.Text(),
            BladeCoats = list.Count(),
            Shaft = list.Text(),
            ShaftCoats = list.Count(),
            TipReinforcement = list.Text(),
        };
        var solvedBefore = list.Count();
        var boardThickness = list.Number();
        construction = construction with { IsMirrored = list.Flag(), Adhesive = list.Text(), Strips = list.Strips() };
        var (tip, face) = (new TipPieceRequest { Species = list.Text(), LengthMm = list.Number() }, new FacingRequest { Species = list.Text(), ThicknessMm = list.Number() });
        construction = construction with
        {
            TipPiece = tip is { Species: null, LengthMm: null } ? null : tip,
            Facing = face is { Species: null, ThicknessMm: null } ? null : face,
        };
        return new()
        {
            Label = label,
            HandSpacingMm = spacing,
            FreeboardMm = freeboard,
            OverallLengthMm = overall,
            Blade = blade with { Offsets = offsets },
            Shaft = shaft,
            Grip = grip,
            Wood = wood with { MeasuredDensityKgM3 = measured.Density, MeasuredModulusMPa = measured.Modulus, BoardThicknessMm = boardThickness },
            Finish = finish,
            Construction = construction,
            Aims = aims with { BenchFlexMm = flex, MaximumMassG = maximumMass },
            Loads = loads with { Duty = duty },
            Drawing = drawing,
            SolvedBefore = solvedBefore,
        };
    }

    // Nulls wait until a value follows, so that those at the end are never written.
    private struct ValueWriter(Utf8JsonWriter json)
    {
        private int nulls;

        internal void Add(double? value)
        {
            if (value is null)
            {
                nulls++;
                return;
            }

            WriteWaiting();
            json.WriteNumberValue(value.Value + 0.0); // no negative zero
        }

        internal void Add(string? value)
        {
            if (value is null)
            {
                nulls++;
                return;
            }

            WriteWaiting();
            json.WriteStringValue(value);
        }

        internal void Add(IReadOnlyList<OffsetRequest>? offsets)
        {
            if (offsets is null)
            {
                nulls++;
                return;
            }

            WriteWaiting();
            json.WriteStartArray();
            foreach (var offset in offsets)
            {
                json.WriteNumberValue(offset.XMm!.Value + 0.0);
                json.WriteNumberValue(offset.HalfBreadthMm!.Value + 0.0);
            }

            json.WriteEndArray();
        }

        internal void Add(IReadOnlyList<StripRequest>? strips)
        {
            if (strips is null)
            {
                nulls++;
                return;
            }

            WriteWaiting();
            json.WriteStartArray();
            foreach (var strip in strips)
            {
                json.WriteStringValue(strip.Species);
                json.WriteNumberValue(strip.WidthMm!.Value + 0.0);
            }

            json.WriteEndArray();
        }

        private void WriteWaiting()
        {
            for (; nulls > 0; nulls--) json.WriteNullValue();
        }
    }

    private ref struct ValueReader
    {
        private Utf8JsonReader json;
        private bool ended;

        internal ValueReader(ReadOnlySpan<byte> text, int depth)
        {
            json = new(text, new JsonReaderOptions { MaxDepth = depth });
            if (!json.Read() || json.TokenType != JsonTokenType.StartArray) throw new JsonException();
        }

        internal double? Number() => Next() switch
        {
            JsonTokenType.Null => null,
            JsonTokenType.Number => json.GetDouble(),
            _ => throw new JsonException(),
        };

        // Counts and sets are whole, small and not negative; anything else was not written here.
        internal int? Count() => Number() is not { } value ? null
            : value is >= 0 and <= MostCount && value == Math.Floor(value) ? (int)value : throw new JsonException();

        internal string? Text() => Next() switch
        {
            JsonTokenType.Null => null,
            JsonTokenType.String => ReadString(),
            _ => throw new JsonException(),
        };

        internal List<OffsetRequest>? Offsets()
        {
            if (!BeginsList()) return null;
            var offsets = new List<OffsetRequest>();
            while (json.Read() && json.TokenType == JsonTokenType.Number)
            {
                var x = json.GetDouble();
                offsets.Add(new() { XMm = x, HalfBreadthMm = SecondOfPair() });
            }

            return json.TokenType == JsonTokenType.EndArray ? offsets : throw new JsonException();
        }

        internal bool? Flag() => Count() switch
        {
            null => null,
            0 => false,
            1 => true,
            _ => throw new JsonException(),
        };

        internal List<StripRequest>? Strips()
        {
            if (!BeginsList()) return null;
            var strips = new List<StripRequest>();
            while (json.Read() && json.TokenType == JsonTokenType.String)
            {
                var species = ReadString();
                strips.Add(new() { Species = species, WidthMm = SecondOfPair() });
            }

            return json.TokenType == JsonTokenType.EndArray ? strips : throw new JsonException();
        }

        private bool BeginsList() => Next() switch
        {
            JsonTokenType.Null => false,
            JsonTokenType.StartArray => true,
            _ => throw new JsonException(),
        };

        // The lists within the list hold pairs, and the second of each is a number.
        private double SecondOfPair() => json.Read() && json.TokenType == JsonTokenType.Number ? json.GetDouble() : throw new JsonException();

        // A value more than this version knows was written by a later one; to drop it would be to build another paddle.
        internal bool IsAtEnd() => (ended || (json.Read() && json.TokenType == JsonTokenType.EndArray)) && !json.Read();

        private JsonTokenType Next()
        {
            if (ended) return JsonTokenType.Null;
            if (!json.Read()) throw new JsonException();
            ended = json.TokenType == JsonTokenType.EndArray;
            return ended ? JsonTokenType.Null : json.TokenType;
        }

        // Bytes that are no UTF-8 surface here and not while the tokens are read.
        private readonly string ReadString()
        {
            try
            {
                return json.GetString()!;
            }
            catch (InvalidOperationException notText)
            {
                throw new JsonException("Not a text.", notText);
            }
        }
    }
}
