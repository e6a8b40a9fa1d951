package crowdline.paper;

import crowdline.loaded.ActOrigins.What;
import crowdline.show.figure.Asked;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What was told about a figure, as it was told. */
final class ToldWords {
    private ToldWords() {}

    /** In words; empty if this was not told, or is told as it is predicted. */
    static Optional<String> of(What what, Asked asked) {
        return Optional.ofNullable(
                switch (what) {
                    case ENTRY_SPEED -> number("begins at %.0f kt", asked.kt());
                    case HEIGHT -> number("begins at %,.0f ft", asked.heightFt());
                    case TIME -> number("takes %.0f s", asked.seconds());
                    case PLACE -> place(asked);
                    case TURNS, TRANSIT, AIRCRAFT, BEGINS -> null;
                });
    }

    private static @Nullable String number(String words, @Nullable Double told) {
        return told == null ? null : String.format(Locale.UK, words, told);
    }

    private static @Nullable String place(Asked asked) {
        Asked.Place place = asked.place();
        if (place != null) {
            return switch (place) {
                case LEFT_END -> "at the left end";
                case CENTRE -> "at the centre";
                case RIGHT_END -> "at the right end";
            };
        }
        Double alongM = asked.alongM();
        return alongM == null
                ? null
                : Math.round(alongM) == 0 ? "its middle at the datum" : "its middle " + along(alongM);
    }

    /** @param metres along the display line, to the right */
    static String along(double metres) {
        return String.format(Locale.UK, "%,d m %s", Math.abs(Math.round(metres)), metres < 0 ? "left" : "right");
    }
}
