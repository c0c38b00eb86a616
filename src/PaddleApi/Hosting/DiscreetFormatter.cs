using System.Text;
using Serilog.Events;
using Serilog.Formatting;

namespace PaddleApi.Hosting;

/// <summary>
/// Writes what went wrong by kind and place, without the words of the exception: those quote the value or the name that broke something, and
/// a person's measures or a design are nobody's business in a log. The request id leads to who can send the same again.
/// </summary>
internal sealed class DiscreetFormatter(ITextFormatter inner) : ITextFormatter
{
    /// <inheritdoc/>
    public void Format(LogEvent logEvent, TextWriter output) => inner.Format(
        logEvent.Exception is not { } fault ? logEvent : new LogEvent(
            logEvent.Timestamp,
            logEvent.Level,
            new Wordless(fault),
            logEvent.MessageTemplate,
            logEvent.Properties.Select(pair => new LogEventProperty(pair.Key, pair.Value)),
            logEvent.TraceId ?? default,
            logEvent.SpanId ?? default),
        output);

    private sealed class Wordless(Exception fault) : Exception
    {
        public override string Message => fault.GetType().FullName!;

        public override string? StackTrace => fault.StackTrace;

        public override string ToString()
        {
            var text = new StringBuilder();
            for (var one = fault; one is not null; one = one.InnerException)
            {
                if (text.Length > 0) text.Append("\n caused by ");
                text.Append(one.GetType().FullName).Append('\n').Append(one.StackTrace);
            }

            return text.ToString();
        }
    }
}
