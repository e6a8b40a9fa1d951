package crowdline.live.state;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.SlotTime;
import crowdline.live.event.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where the aircraft is in its act, and how it got there.
 *
 * @param actId the act chosen, or null
 * @param variant the variant flown, or null if no act is chosen
 * @param sequence the variant's figures and how they are to be flown
 * @param slot when the act's slot begins, or null if unknown
 * @param actStartedAtS when the act began, or null if it has not
 * @param phase where it is
 * @param lead who moves the position
 * @param flown what was flown in this act so far, the current figure last
 * @param flownActs acts that are over, oldest first
 */
public record Course(
        @Nullable String actId,
        @Nullable String variant,
        Sequence sequence,
        @Nullable SlotTime slot,
        @Nullable Double actStartedAtS,
        Phase phase,
        Lead lead,
        List<Flown> flown,
        List<FlownAct> flownActs) {

    static final Course NONE =
            new Course(null, null, Sequence.NONE, null, null, new Phase.Waiting(), Lead.HAND, List.of(), List.of());

    public Course {
        flown = List.copyOf(flown);
        flownActs = List.copyOf(flownActs);
    }

    /** The variant's figures in its own order, which an index counts. */
    public List<String> figureIds() {
        return sequence.figureIds();
    }

    /** The ids of all figures in the order they are to be flown. */
    public List<String> idsAsFlown() {
        return sequence.idsAsFlown();
    }

    /** The indices of the figures that are not dropped, in the order they are to be flown. */
    public List<Integer> toFly() {
        return sequence.toFly();
    }

    /** Figures left out on purpose, in the order they were dropped. */
    public List<String> droppedIds() {
        return sequence.droppedIds();
    }

    /** Which figure this is in the order flown, from 0; −1 before the act and the count after it, as the index is. */
    public int placeOf(int index) {
        return sequence.placeOf(index);
    }

    /** The figures that are flown before this one and not after it, or the other way round, because two were swapped. */
    public List<Integer> swappedWith(int index) {
        return sequence.swappedWith(index);
    }

    /** What was chosen to move the position. */
    public Source source() {
        return lead.source();
    }

    /** True while the clock stands in for the aircraft. */
    public boolean clockStandsIn() {
        return lead.clockStandsIn();
    }

    /** True if the act that waits begins by itself once the aircraft is seen to. */
    public boolean aircraftMayBegin() {
        return source() == Source.AIRCRAFT && !lead.handBegins();
    }

    /** True if the first figure is still being flown and the aircraft said that it had begun. */
    public boolean begunByAircraft() {
        return phase instanceof Phase.Flying
                && flown.size() == 1
                && flown.get(0).mark() == Source.AIRCRAFT;
    }

    /** The index of the current figure, of the last one when off the plan, −1 before the act, the count after it. */
    public int position() {
        if (phase instanceof Phase.Flying flying) {
            return flying.index();
        }
        if (phase instanceof Phase.Held held) {
            return held.index();
        }
        if (phase instanceof Phase.OffPlan off) {
            return off.lastIndex();
        }
        return phase instanceof Phase.Waiting ? -1 : figureIds().size();
    }

    /** The figure being flown, held or not; null if there is none. */
    public @Nullable String figureId() {
        return phase instanceof Phase.Flying || phase instanceof Phase.Held
                ? figureIds().get(position())
                : null;
    }

    /** The next figure that is not dropped, or the way to it. */
    public OptionalInt nextIndex() {
        return nextIndexAfter(position());
    }

    /** The ids of the figures that are still to be flown, without the ways to them. */
    public Stream<String> figuresAhead() {
        return sequence.figuresAfter(position()).map(figureIds()::get);
    }

    /** The first figure flown after the one with this {@code index} that is not dropped, or the way to it. */
    public OptionalInt nextIndexAfter(int index) {
        return sequence.nextIndexAfter(index);
    }

    /** When the act was over that was the last of the same id before this run; minus infinity if this is the first. */
    public double earlierRunEndS() {
        boolean overNow = phase instanceof Phase.ActDone || phase instanceof Phase.ShowDone;
        List<FlownAct> before =
                overNow && !flownActs.isEmpty() ? flownActs.subList(0, flownActs.size() - 1) : flownActs;
        return before.stream()
                .filter(act -> act.actId().equals(actId))
                .mapToDouble(FlownAct::endedAtS)
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /** True before the act has begun. */
    public boolean isWaiting() {
        return phase instanceof Phase.Waiting;
    }

    /** True from the start of the act to its end. */
    public boolean inTheAir() {
        return phase instanceof Phase.Flying || phase instanceof Phase.Held || phase instanceof Phase.OffPlan;
    }

    /** With no act chosen; what was flown before stays. */
    Course withoutAct() {
        return new Course(
                null, null, Sequence.NONE, null, null, new Phase.Waiting(), Lead.of(source()), List.of(), flownActs);
    }

    Course withPhase(Phase next) {
        return new Course(actId, variant, sequence, slot, actStartedAtS, next, lead, flown, flownActs);
    }

    Course withLead(Lead next) {
        return new Course(actId, variant, sequence, slot, actStartedAtS, phase, next, flown, flownActs);
    }

    /** In another variant, whose own order holds again. */
    Course withVariant(FlightEvent.VariantChosen next) {
        Sequence planned = Sequence.planned(next.figureIds(), next.transitIds()).withDropped(droppedIds());
        return new Course(actId, next.variant(), planned, slot, actStartedAtS, phase, lead, flown, flownActs);
    }

    /** With a figure directly after another. */
    Course withMoved(int index, int after) {
        return withSequence(sequence.withMoved(index, after));
    }

    Course withDropped(List<String> next) {
        return withSequence(sequence.withDropped(next));
    }

    Course withSequence(Sequence next) {
        return new Course(actId, variant, next, slot, actStartedAtS, phase, lead, flown, flownActs);
    }

    Course withFlown(List<Flown> next) {
        return new Course(actId, variant, sequence, slot, actStartedAtS, phase, lead, next, flownActs);
    }

    Course withActStart(@Nullable Double atS) {
        return new Course(actId, variant, sequence, slot, atS, phase, lead, flown, flownActs);
    }

    Course withFlownActs(List<FlownAct> next) {
        return new Course(actId, variant, sequence, slot, actStartedAtS, phase, lead, flown, next);
    }

    /** The last flown figure with another in its place, or none. */
    Course withLastFlown(@Nullable Flown last) {
        List<Flown> next = new ArrayList<>(flown.subList(0, flown.size() - 1));
        if (last != null) {
            next.add(last);
        }
        return withFlown(next);
    }

    Course plusFlown(Flown more) {
        List<Flown> next = new ArrayList<>(flown);
        next.add(more);
        return withFlown(next);
    }
}
