package crowdline.sight.fact;

import crowdline.sight.Said;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * A number a crowd can picture, in words that are ready to be said.
 *
 * @param id stable for the same figure and kind: the figure's or act's id, a dot, the kind
 * @param figureId the figure it is about, or null for the whole act
 * @param kind what is told
 * @param number as computed
 * @param unit of {@code number} and {@code rounded}
 * @param rounded what the words say
 * @param text one or two sentences, at most 160 characters
 * @param shortText a shorter form
 * @param telling how much it tells: the greater, the better worth saying; judgement, no source
 */
public record CrowdFact(
        String id,
        @Nullable String figureId,
        Kind kind,
        double number,
        String unit,
        double rounded,
        String text,
        String shortText,
        double telling) {

    /** What a fact tells, with how telling it is at its best (judgement, no source). */
    public enum Kind {
        BACKWARDS(10, "the way backwards"),
        SPIN_TURNS(9, "the number of turns"),
        TUMBLES(9, "the number of tumbles"),
        SLOWEST(7, "the least speed"),
        FLICK(7, "the time of a flick"),
        HEAVIEST(8, "the greatest load"),
        FLOATING(8, "the time without weight"),
        CLIMB(7, "the climb"),
        UPSIDE_DOWN(7, "the time upside down"),
        ROLL(6, "the time of a roll"),
        HIGHEST(7, "the greatest height"),
        DROP(6, "the way down"),
        LIGHTEST(6, "the least load"),
        FASTEST(7, "the greatest speed"),
        LOOKS_HIGH(5, "the height above the horizon"),
        FARTHEST(4, "the distance"),
        SOUND(4, "the delay of the sound"),
        POWER(8, "the power for each tonne"),
        TIP_SPEED(8, "the speed of the propeller tips"),
        PROPELLER(7, "the speed of the propeller"),
        MASS(6, "the mass"),
        SPAN(6, "the span"),
        ROLLS(6, "the number of rolls"),
        TOTAL_CLIMB(6, "the sum of all climbs"),
        DISTANCE_FLOWN(5, "the distance flown");

        private final double best;
        private final String measure;

        Kind(double best, String measure) {
            this.best = best;
            this.measure = measure;
        }

        /** The number it tells, as a sentence calls it. */
        String measure() {
            return measure;
        }

        double best() {
            return best;
        }
    }

    static CrowdFact of(Subject about, Kind kind, Said said, double share, String text, String shortText) {
        double telling = kind.best() * Math.min(share, 1);
        String id = about.id() + "." + kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new CrowdFact(
                id, about.figureId(), kind, said.value(), said.unit(), said.rounded(), text, shortText, telling);
    }

    /** What a fact is about: an act's id without a figure, or a figure's. */
    record Subject(String id, @Nullable String figureId) {}
}
