package crowdline.draft;

import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.speech.plain.CommonVocabulary;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
            Map.entry("tow", "the tow"),
            Map.entry("tow release", "the moment it lets go of the rope"),
            Map.entry("level out", "the pull-out"),
            Map.entry("join-up", "the join-up"),
            Map.entry("aileron roll", "a roll"),
            Map.entry("break", "the break"),
            Map.entry("changing shape", "a change of shape"),
            Map.entry("backwards flight", "some backwards flying"),
            Map.entry("sideways flight", "some sideways flying"),
            Map.entry("jump", "the jump"),
            Map.entry("freefall", "the freefall"),
            Map.entry("canopy descent", "the ride down under canopy"),
            Map.entry("streamer drop", "a streamer for the wind"),
            Map.entry("canopy landing", "the landings"));

    /** Announced as the only one of its sort, and shown more than once all the same. */
    private static final Set<String> AGAIN = Set.of("jump", "break", "level out");

    private static final List<String> COUNTED = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    /** Of a name in small letters that the list gave, no more words than this: more are a description. */
    private static final int MOST_WORDS = 3;

    /** A family of which each figure is flown once, under whatever name. */
    private static final String JUMPS = "parachuting";

    /** Half a roll out of flight upside down. */
    static final String RIGHTING = "half a roll, back the right way up";

    private Called() {}

    /**
     * A figure as it is announced.
     *
     * @param entry what the catalogue has of it, or null if it does not know it
     * @param times how often something {@linkplain #noun called so} was flown before in the act
     */
    static String of(Figure figure, @Nullable CatalogueEntry entry, int times) {
        if (entry == null) {
            return unknown(figure.shownName());
        }
        String special = special(figure, entry);
        String noun = noun(figure, entry);
        boolean countable = special == null || special.matches("an? .*");
        if (times > 0 && (countable || AGAIN.contains(entry.name()))) {
            return (times == 1 ? "another " : times == 2 ? "a third " : "one more ") + noun;
        }
        double count = count(figure);
        if (count > 1 && countable && turns(figure, entry) == 0) {
            String half = count == Math.rint(count) ? "" : " and a half";
            return COUNTED.get((int) count) + half + " " + several(noun, special != null);
        }
        double turns = turns(figure, entry);
        if (turns >= 2 && turns == Math.rint(turns) && turns < COUNTED.size()) {
            return Sentences.withArticle(noun) + " of " + COUNTED.get((int) turns) + " turns";
        }
        return special == null ? Sentences.withArticle(noun) : special;
    }

    /** What it is called, with no article: who hears of "a third" of them has heard two called so. */
    static String noun(Figure figure, @Nullable CatalogueEntry entry) {
        if (entry == null) {
            return figure.shownName();
        }
        String own = ownName(figure, entry);
        String special = special(figure, entry);
        return own != null ? own : special == null ? entry.name() : special.replaceFirst("^(an?|the) ", "");
    }

    /** With its article, where that or the name is not as the catalogue has it; else null. */
    private static @Nullable String special(Figure figure, CatalogueEntry entry) {
        String own = ownName(figure, entry);
        String spoken = SPOKEN.get(entry.name());
        return own == null
                ? spoken
                : spoken != null && spoken.startsWith("the ") && entry.family().equals(JUMPS) ? "the " + own : null;
    }

    /** Whether what is announced so is more than one thing: "two rolls", "the landings". */
    static boolean isSeveral(String called) {
        return called.equals("the landings")
                || COUNTED.subList(2, COUNTED.size()).contains(called.replaceFirst(" .*", ""));
    }

    /**
     * What the list calls it, where that is a name of its own or describes it by a word before the catalogue's, and not that
     * with more or less to it; else null.
     */
    private static @Nullable String ownName(Figure figure, CatalogueEntry entry) {
        String title = figure.shownName();
        boolean isName = title.matches("[a-z][a-z -]*[a-z]")
                && title.split(" ").length <= MOST_WORDS
                && !entry.comesOrGoes()
                && (title.endsWith(" " + entry.name())
                        || (!key(entry.name()).contains(key(title))
                                && !key(title).contains(key(entry.name()))));
        return isName ? title.replaceFirst("^(an?|the) ", "") : null;
    }

    private static String key(String name) {
        return name.replaceAll("[ -]", "");
    }

    /**
     * What nobody knows but those who wrote it: "the winch demo"; with a name or an article of its own as it stands. What stands in
     * brackets is for the eye, and a capital that only begins a line makes no name.
     */
    private static String unknown(String written) {
        String bare = written.replaceAll("\\s*\\([^()]*\\)", "").strip();
        boolean begins =
                bare.matches("\\p{Lu}\\p{Ll}+( \\p{Ll}+)*") && new CommonVocabulary().has(bare.replaceFirst(" .*", ""));
        String words = bare.isEmpty() ? written : begins ? Sentences.within(bare) : bare;
        return words.matches("(an?|the|our|my|one|two|three|four|five|six|some) .*") || !words.matches("[a-z0-9].*")
                ? words
                : "the " + words;
    }

    /** "stall turns"; what is described goes on behind its noun: "rolls going straight up". */
    private static String several(String noun, boolean described) {
        int comma = noun.indexOf(',');
        int end = comma > 0 ? comma : described && noun.contains(" ") ? noun.indexOf(' ') : noun.length();
        String head = noun.substring(0, end);
        String plural = head.matches(".*(sh|ch|ss|x)") ? head + "es" : head.endsWith("s") ? head : head + "s";
        return plural + noun.substring(end);
    }

    /** A number in words, as far as they are short. */
    static String counted(int number) {
        return number < COUNTED.size() ? COUNTED.get(number) : String.valueOf(number);
    }

    /** How many times in a row it was asked for, halves too; 1 if that was not said. */
    static double count(Figure figure) {
        Asked asked = figure.asked();
        Double count = asked == null ? null : asked.count();
        return count == null || 2 * count != Math.rint(2 * count) || count >= COUNTED.size() ? 1 : count;
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
