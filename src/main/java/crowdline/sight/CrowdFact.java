package crowdline.sight;

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
        BACKWARDS(10),
        SPIN_TURNS(9),
        TUMBLES(9),
        SLOWEST(7),
        FLICK(7),
        HEAVIEST(8),
        FLOATING(8),
        CLIMB(7),
        UPSIDE_DOWN(7),
        ROLL(6),
        HIGHEST(7),
        DROP(6),
        LIGHTEST(6),
        FASTEST(7),
        LOOKS_HIGH(5),
        FARTHEST(4),
        SOUND(4),
        POWER(8),
        TIP_SPEED(8),
        PROPELLER(7),
        MASS(6),
        SPAN(6),
        ROLLS(6),
        TOTAL_CLIMB(6),
        DISTANCE_FLOWN(5);

        private final double best;

        Kind(double best) {
            this.best = best;
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
