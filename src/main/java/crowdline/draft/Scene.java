package crowdline.draft;

import crowdline.flight.FigureFlight;
import crowdline.flight.moment.FigureMoments;
import crowdline.flight.moment.Moment;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One figure of the act as it is flown.
 *
 * @param entry what the catalogue has of it, or null if it does not know it
 * @param seen its moments, seconds after its start
 * @param before how often the same was flown before in the act
 * @param calledSo how often something called the same was flown before in the act
 * @param cameBack whether the aircraft has just turned back for it
 * @param last whether no figure with a name of its own follows
 * @param begunInverted whether it begins upside down
 */
record Scene(
        Figure figure,
        FigureFlight flown,
        @Nullable CatalogueEntry entry,
        FigureMoments seen,
        int before,
        int calledSo,
        boolean cameBack,
        boolean last,
        boolean begunInverted) {

    private static final Map<String, Double> INTEREST = Map.of(
            "stalled", 10.0,
            "formation", 8.0,
            "loops and rolls", 7.0,
            "up and over", 8.0,
            "helicopter", 7.0,
            "parachuting", 8.0,
            "loops", 6.0,
            "rolls", 5.0,
            "turns", 4.0,
            "lines", 3.5);

    /** Words of the glossary, and the moment they point at. */
    private static final List<Map.Entry<String, MomentKind>> POINTING = List.of(
            Map.entry("slide", MomentKind.SLIDES_BACKWARDS),
            Map.entry("pivot", MomentKind.PIVOTS),
            Map.entry("tumble", MomentKind.TUMBLES),
            Map.entry("hanging still", MomentKind.HANGS),
            Map.entry("drop a wing", MomentKind.SPIN_BEGINS),
            Map.entry("(quarter|half) roll", MomentKind.ROLLS),
            Map.entry("flick|blink|whip|lightning|instant", MomentKind.FLICKS),
            Map.entry("rolls? (on )?to its back|rolls (right )?round", MomentKind.ROLLS),
            Map.entry("\\btop\\b", MomentKind.OVER_THE_TOP),
            Map.entry("slope down|straight down|dive", MomentKind.HEADS_DOWN),
            Map.entry("climb", MomentKind.PULLS_UP),
            Map.entry("leans", MomentKind.TURN_BEGINS));

    boolean isRest() {
        return figure.transit() || (entry != null && entry.isOnTheWay());
    }

    /** Whether it is the half roll back to the right way up, of which the glossary's words are not true. */
    boolean isRighting() {
        return begunInverted && entry != null && entry.name().equals("half roll");
    }

    /** Whether it is only taken for this figure, by the path in a flight log. */
    boolean isGuess() {
        Asked asked = figure.asked();
        return asked != null && asked.isGuessedOfLog();
    }

    /** Whether the list says that there is smoke. */
    boolean hasSmoke() {
        Asked asked = figure.asked();
        String note = asked == null ? null : asked.note();
        return note != null && note.contains("smoke on");
    }

    Scene asLast() {
        return new Scene(figure, flown, entry, seen, before, calledSo, cameBack, true, begunInverted);
    }

    double durationS() {
        return flown.durationS();
    }

    /** How much there is to tell of it; judgement, no source. What was explained before has less. */
    double interest() {
        double family = entry == null ? 3 : INTEREST.getOrDefault(entry.family(), 2.5);
        long watched = seen.moments().stream().filter(Moment::worthWatching).count();
        return (family + watched) * (before == 0 ? 1 : 0.4);
    }

    /** The moment a text points at; empty if it points at none that is seen here. */
    Optional<Moment> pointedAt(String text) {
        Optional<Moment> named = POINTING.stream()
                .filter(p -> Pattern.compile("(?i)" + p.getKey()).matcher(text).find())
                .flatMap(p -> seen.find(MomentName.first(p.getValue())).stream())
                .findFirst();
        return named.or(
                () -> seen.moments().stream().filter(Moment::worthWatching).findFirst());
    }

    /** When the last moment worth watching is over, seconds before the figure's end; empty if it has none. */
    Optional<Double> watchedToS() {
        return seen.moments().stream()
                .filter(Moment::worthWatching)
                .map(m -> durationS() - m.afterS() - FreeTime.AFTER_S)
                .reduce((a, b) -> b);
    }

    /** The last moment worth watching before a time; empty if there is none. */
    Optional<Moment> watchedBefore(double afterS) {
        return seen.moments().stream()
                .filter(m -> m.worthWatching() && m.afterS() < afterS)
                .reduce((a, b) -> b);
    }

    /** The first moment worth watching after a time; empty if there is none. */
    Optional<Moment> watchedAfter(double afterS) {
        return seen.moments().stream()
                .filter(m -> m.worthWatching() && m.afterS() >= afterS)
                .findFirst();
    }
}
