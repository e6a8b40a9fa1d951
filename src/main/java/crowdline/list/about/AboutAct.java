package crowdline.list.about;

import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a pilot's letter says of the act beside its figures. It is offered and never more: whoever makes the act may type
 * something else.
 *
 * @param pilot who flies it, or null if nobody is named
 * @param begins when its slot begins, by the clock at the venue; null if that is not said
 * @param minutes how long all of it takes, {@link Lengths#LEAST} to {@link Lengths#MOST}; null if that is not said
 */
public record AboutAct(
        @Nullable String pilot,
        @Nullable LocalTime begins,
        @Nullable Double minutes) {
    /** Of a letter that says nothing. */
    public static final AboutAct NOTHING = new AboutAct(null, null, null);

    /** Reads what stands around the figures of a list; where something is said twice, the first counts. */
    public static AboutAct of(FigureList list) {
        List<String> notes = list.notes();
        Slots slots = Slots.in(notes);
        Double length = Lengths.in(notes);
        return new AboutAct(
                Pilots.in(notes, list.lines().stream().map(ListLine::text).toList()),
                slots.begins(),
                length == null ? slots.minutes() : length);
    }
}
