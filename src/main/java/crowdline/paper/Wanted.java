package crowdline.paper;

import crowdline.live.debrief.Debrief;
import crowdline.loaded.LoadedShow;
import crowdline.measure.Measures;
import crowdline.sheet.day.OtherDay;
import crowdline.show.Act;
import crowdline.show.Variant;
import java.time.LocalTime;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What is to be on paper.
 *
 * @param acts which acts of the show, in running order
 * @param chosen the variant of an act
 * @param one whether one act was asked for, and not all
 * @param large whether all type is to be large
 * @param flown what was flown, or null if nothing is known of that
 * @param measures what speeds and heights are told in
 */
public record Wanted(
        LoadedShow loaded,
        List<Act> acts,
        Function<Act, Variant> chosen,
        boolean one,
        boolean large,
        @Nullable Flown flown,
        Measures measures) {
    public Wanted {
        acts = List.copyOf(acts);
    }

    /**
     * What was flown.
     *
     * @param hour the clock at the venue at a second of the session
     * @param other another day to set beside it, or null
     */
    public record Flown(
            Debrief debrief,
            DoubleFunction<LocalTime> hour,
            @Nullable OtherDay other) {}

    Type type() {
        return new Type(large ? Type.LARGE : 1);
    }
}
