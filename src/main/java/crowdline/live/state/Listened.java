package crowdline.live.state;

import crowdline.live.event.HeardEvent;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the microphone told.
 *
 * @param times when it listened, in the order of time, without overlap
 * @param talk when somebody spoke while it did, in the order they were told
 */
public record Listened(List<Time> times, List<Span> talk) {
    static final Listened NEVER = new Listened(List.of(), List.of());

    /**
     * A time in which it listened.
     *
     * @param fromS when it began, on the session's scale
     * @param toS when it ended, or null if nobody said so yet
     */
    public record Time(double fromS, @Nullable Double toS) {}

    /** From a moment to a later one, on the session's scale. */
    public record Span(double fromS, double toS) {}

    public Listened {
        times = List.copyOf(times);
        talk = List.copyOf(talk);
    }

    /** Whether it listens now. */
    public boolean isOn() {
        return !times.isEmpty() && times.get(times.size() - 1).toS() == null;
    }

    /** When it listened, as far as is known: a time whose end nobody told, as after a crash, ends with the last talk in it. */
    public List<Span> spans() {
        return times.stream().map(time -> new Span(time.fromS(), endS(time))).toList();
    }

    private double endS(Time time) {
        Double toS = time.toS();
        return toS != null ? toS : talk.stream().mapToDouble(Span::toS).reduce(time.fromS(), Math::max);
    }

    Listened next(HeardEvent event) {
        if (event instanceof HeardEvent.TalkHeard heard) {
            List<Span> more = new ArrayList<>(talk);
            more.add(new Span(heard.fromS(), heard.toS()));
            return new Listened(times, more);
        }
        List<Time> next = new ArrayList<>(times);
        if (isOn()) {
            Time last = next.remove(next.size() - 1);
            double endS = event instanceof HeardEvent.ListeningEnded ? event.atS() : endS(last);
            next.add(new Time(last.fromS(), Math.max(last.fromS(), endS)));
        }
        if (event instanceof HeardEvent.ListeningBegan) {
            next.add(new Time(event.atS(), null));
        }
        return new Listened(next, talk);
    }
}
