package crowdline.list.about;

import crowdline.list.line.Aside;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.show.aircraft.Kinds;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a pilot's letter says of the act beside its figures. It is offered and never more: whoever makes the act may type
 * something else.
 *
 * @param pilot who flies it, or null if nobody is named
 * @param aircraft what it is flown in is called, or null if that is not said; it may be no more than its kind
 * @param begins when its slot begins, by the clock at the venue; null if that is not said
 * @param minutes how long all of it takes, {@link Lengths#LEAST} to {@link Lengths#MOST}; null if that is not said
 */
public record AboutAct(
        @Nullable String pilot,
        @Nullable String aircraft,
        @Nullable LocalTime begins,
        @Nullable Double minutes) {
    /** Beside these the length of all of it may be said in one breath: "then land 6 mins". */
    private static final Set<String> BOUNDS = Set.of("take-off", "landing");

    /** Of a letter that says nothing. */
    public static final AboutAct NOTHING = new AboutAct(null, null, null, null);

    /** Reads what stands around the figures of a list; where something is said twice, the first counts. */
    public static AboutAct of(FigureList list) {
        List<String> notes = list.notes();
        List<String> said = inOrder(list);
        Slots slots = Slots.in(notes, said);
        Double length = Optional.ofNullable(Lengths.in(notes))
                .orElseGet(() -> Lengths.in(list.lines().stream()
                        .filter(line -> line.seconds() == null && BOUNDS.contains(line.title()))
                        .map(ListLine::text)
                        .toList()));
        return new AboutAct(
                Pilots.in(SmallLetters.named(notes), SmallLetters.named(said)),
                AircraftName.in(notes),
                slots.begins(),
                length == null ? slots.minutes() : length);
    }

    /** What the aircraft is called, if that is more than its kind. */
    public Optional<String> calledMoreThan(Kinds kinds) {
        return Optional.ofNullable(aircraft).filter(name -> kinds.find(name).isEmpty());
    }

    /** Whether a note by itself says who flies, when, or for how long. */
    public static boolean isToldBy(String note) {
        return !of(new FigureList(List.of(), List.of(new Aside(note, 0, List.of())), List.of()))
                .equals(NOTHING);
    }

    /** All that was written, in the order in which it was. */
    private static List<String> inOrder(FigureList list) {
        List<String> said = new ArrayList<>();
        int at = 0;
        for (Aside aside : list.asides()) {
            while (at < Math.min(aside.before(), list.lines().size())) {
                said.add(list.lines().get(at++).text());
            }
            said.add(aside.text());
        }
        list.lines().stream().skip(at).map(ListLine::text).forEach(said::add);
        return said;
    }
}
