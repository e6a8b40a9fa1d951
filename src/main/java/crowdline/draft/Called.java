package crowdline.draft;

import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** How a figure is announced, such as "a loop" or "half a roll". */
final class Called {
    /** The catalogue's names that are no countable noun, or would be trade talk as they stand. */
    private static final Map<String, String> SPOKEN = Map.ofEntries(
            Map.entry("take-off", "the take-off"),
            Map.entry("landing", "the landing"),
            Map.entry("pull to vertical", "a climb straight up"),
            Map.entry("push-over", "a push over the top"),
            Map.entry("half loop with roll out on top", "a roll off the top"),
            Map.entry("vertical roll up", "a roll going straight up"),
            Map.entry("vertical roll down", "a roll going straight down"),
            Map.entry("45 degree up-line with roll", "a roll on the way up a slope"),
            Map.entry("45 degree down-line with flick", "a flick on the way down a slope"),
            Map.entry("humpty bump with push top", "a humpty bump, pushed over the top"),
            Map.entry("tail slide wheels up", "a tail slide, falling over backwards"),
            Map.entry("opposite rolls", "two rolls, one each way"),
            Map.entry("half roll", "half a roll"),
            Map.entry("half flick", "half a flick"),
            Map.entry("lomcovak", "a tumble, which flyers call a lomcovak"),
            Map.entry("wing rock", "a wave of the wings"),
            Map.entry("run-in", "the run-in"),
            Map.entry("level out", "the pull-out"),
            Map.entry("join-up", "the join-up"),
            Map.entry("break", "the break"),
            Map.entry("backwards flight", "a flight backwards"),
            Map.entry("sideways flight", "a flight sideways"),
            Map.entry("jump", "the jump"),
            Map.entry("freefall", "freefall"),
            Map.entry("canopy descent", "the ride down under canopy"),
            Map.entry("canopy landing", "the landings"));

    private static final List<String> COUNTED = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private Called() {}

    /**
     * A figure as it is announced.
     *
     * @param entry what the catalogue has of it, or null if it does not know it
     * @param times how often it was flown before in the act
     */
    static String of(Figure figure, @Nullable CatalogueEntry entry, int times) {
        if (entry == null) {
            return figure.shownName();
        }
        String special = SPOKEN.get(entry.name());
        String noun = special == null ? entry.name() : special.replaceFirst("^(an?|the) ", "");
        boolean countable = special == null || special.matches("an? .*");
        if (times > 0 && countable) {
            return (times == 1 ? "another " : times == 2 ? "a third " : "one more ") + noun;
        }
        int count = count(figure);
        if (count > 1 && countable && noun.matches(".*[a-z&&[^s]]") && turns(figure, entry) == 0) {
            return COUNTED.get(count) + " " + noun + "s";
        }
        double turns = turns(figure, entry);
        if (turns >= 2 && turns == Math.rint(turns) && turns < COUNTED.size()) {
            return Sentences.withArticle(noun) + " of " + COUNTED.get((int) turns) + " turns";
        }
        return special == null ? Sentences.withArticle(noun) : special;
    }

    /** Whether what is announced so is more than one thing: "two rolls", "the landings". */
    static boolean isSeveral(String called) {
        return called.equals("the landings")
                || COUNTED.subList(2, COUNTED.size()).contains(called.replaceFirst(" .*", ""));
    }

    /** How many times in a row it was asked for, 1 if that was not said. */
    private static int count(Figure figure) {
        Asked asked = figure.asked();
        Double count = asked == null ? null : asked.count();
        return count == null || count != Math.rint(count) || count >= COUNTED.size() ? 1 : (int) Math.round(count);
    }

    /** How many turns of a spin are flown. */
    private static double turns(Figure figure, CatalogueEntry entry) {
        List<Element> own = figure.elements();
        return (own == null ? entry.elements() : own)
                .stream()
                        .filter(Element.Spin.class::isInstance)
                        .mapToDouble(e -> ((Element.Spin) e).turns())
                        .sum();
    }
}
