package crowdline.live.debrief;

import crowdline.live.state.Listened;
import crowdline.live.state.LiveState;
import crowdline.live.state.RemarkEntry;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The day as a whole: what became of every act and of every duty, and when somebody spoke.
 *
 * @param acts in the order they were to be flown, cancelled ones in their place
 * @param duties of the day, in the order of the show
 * @param talk when somebody spoke, in the order of time, without overlap: as the microphone heard it while it listened, else as
 *     keys and the length of the words say
 * @param measured when the microphone listened, in the order of time
 */
public record DayRun(List<ActRun> acts, List<DutyRun> duties, List<Talked> talk, List<Listened.Span> measured) {
    /** Nothing happened, and nothing was asked for. */
    public static final DayRun NONE = new DayRun(List.of(), List.of(), List.of());

    /**
     * An act of the day.
     *
     * @param slot when its slot was planned to begin, by the clocks of the venue
     * @param slotMinutes how long that was
     * @param movedS by how much the slot was moved on the day, seconds; negative for earlier
     * @param cancelled whether it was cancelled
     * @param flights each time it was flown, in the order of time
     */
    public record ActRun(
            String actId,
            String title,
            LocalTime slot,
            double slotMinutes,
            double movedS,
            boolean cancelled,
            List<Flight> flights) {
        public ActRun {
            flights = List.copyOf(flights);
        }
    }

    /**
     * One time an act was flown.
     *
     * @param startS when it began, on the session's scale
     * @param endS when it ended, or null if it is in the air
     */
    public record Flight(double startS, @Nullable Double endS) {}

    /**
     * A stretch in which somebody spoke.
     *
     * @param fromS on the session's scale
     * @param toS likewise, not before {@code fromS}
     * @param kind of what was said first in it, or null if it was only heard
     */
    public record Talked(double fromS, double toS, @Nullable RemarkKind kind) {}

    public DayRun {
        acts = List.copyOf(acts);
        duties = List.copyOf(duties);
        talk = List.copyOf(talk);
        measured = List.copyOf(measured);
    }

    /** Of a day without a microphone. */
    public DayRun(List<ActRun> acts, List<DutyRun> duties, List<Talked> talk) {
        this(acts, duties, talk, List.of());
    }

    static DayRun of(Show show, LiveState state, List<Debrief.Run> runs, DebriefSources sources) {
        List<ActRun> acts = new ArrayList<>();
        for (String id : state.runningOrder()) {
            show.act(id).ifPresent(act -> acts.add(act(act, state, runs)));
        }
        return new DayRun(
                acts,
                DutyRun.all(show, state),
                talk(show, state, sources),
                state.listened().spans());
    }

    private static ActRun act(Act act, LiveState state, List<Debrief.Run> runs) {
        return new ActRun(
                act.id(),
                act.title(),
                act.slotStart(),
                act.slotMinutes(),
                state.day().laterS(act.id()),
                state.day().isCancelled(act.id()),
                runs.stream()
                        .filter(run -> run.actId().equals(act.id()))
                        .map(run -> new Flight(run.sessionStartS(), run.sessionEndS()))
                        .toList());
    }

    private static List<Talked> talk(Show show, LiveState state, DebriefSources sources) {
        Map<String, Remark> byId = show.remarksById();
        List<Talked> all = new ArrayList<>();
        for (RemarkEntry entry : state.talk().entries()) {
            Remark remark = byId.get(entry.remarkId());
            if (remark == null || entry.outcome() == RemarkEntry.Outcome.SKIPPED) {
                continue;
            }
            String text = remark.words(entry.form() == RemarkForm.SHORT);
            double fromS = entry.beganAtS(() -> sources.spokenS(text));
            all.addAll(unmeasured(new Talked(Math.max(0, fromS), entry.endedAtS(), remark.kind()), state.listened()));
        }
        state.listened().talk().forEach(span -> all.add(new Talked(span.fromS(), span.toS(), null)));
        all.sort(Comparator.comparingDouble(Talked::fromS));
        List<Talked> joined = new ArrayList<>();
        for (Talked next : all) {
            Talked last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && next.fromS() <= last.toS()) {
                joined.set(joined.size() - 1, new Talked(last.fromS(), Math.max(last.toS(), next.toS()), last.kind()));
            } else {
                joined.add(next);
            }
        }
        return joined;
    }

    /** What of a stretch lies outside the times in which the microphone listened. */
    private static List<Talked> unmeasured(Talked talked, Listened listened) {
        List<Talked> left = new ArrayList<>();
        double fromS = talked.fromS();
        for (Listened.Span span : listened.spans()) {
            if (span.toS() > fromS && span.fromS() < talked.toS()) {
                if (span.fromS() > fromS) {
                    left.add(new Talked(fromS, span.fromS(), talked.kind()));
                }
                fromS = span.toS();
            }
        }
        if (fromS < talked.toS() || fromS == talked.fromS()) {
            left.add(new Talked(fromS, talked.toS(), talked.kind()));
        }
        return left;
    }

    /** How much of the time between two moments the microphone listened, 0 to 1. */
    public double measuredShare(double fromS, double toS) {
        double heardS = measured.stream()
                .mapToDouble(span -> Math.max(0, Math.min(span.toS(), toS) - Math.max(span.fromS(), fromS)))
                .sum();
        return toS > fromS ? Math.min(1, heardS / (toS - fromS)) : 0;
    }

    /** Whether anything is known of talk between two moments: what was marked, shown in its time, or listened for. */
    public boolean knowsTalk(double fromS, double toS) {
        return measuredShare(fromS, toS) > 0
                || talk.stream().anyMatch(talked -> talked.toS() > fromS && talked.fromS() < toS);
    }

    /** How long somebody spoke between two moments, seconds. */
    public double talkS(double fromS, double toS) {
        return talk.stream()
                .mapToDouble(t -> Math.max(0, Math.min(t.toS(), toS) - Math.max(t.fromS(), fromS)))
                .sum();
    }

    /** How much of the time between two moments somebody spoke, per cent; of less than a second as if it were one. */
    public double talkPercent(double fromS, double toS) {
        return 100 * talkS(fromS, toS) / Math.max(1, toS - fromS);
    }

    /** From the first thing that happened to the last, on the session's scale; null if nothing did. */
    public @Nullable Flight span() {
        double fromS = Double.POSITIVE_INFINITY;
        double toS = Double.NEGATIVE_INFINITY;
        for (ActRun act : acts) {
            for (Flight flight : act.flights()) {
                Double endS = flight.endS();
                fromS = Math.min(fromS, flight.startS());
                toS = Math.max(toS, endS == null ? flight.startS() : endS);
            }
        }
        for (Talked talked : talk) {
            fromS = Math.min(fromS, talked.fromS());
            toS = Math.max(toS, talked.toS());
        }
        return fromS <= toS ? new Flight(fromS, toS) : null;
    }
}
