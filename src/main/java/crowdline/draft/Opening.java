package crowdline.draft;

import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The first words of an act, which say who flies what, and the last. */
final class Opening {
    private static final List<String> GOODBYES = List.of(
            "Ladies and gentlemen: %s.",
            "Please show your appreciation for %s.",
            "That was the display of %s. Thank you.",
            "Wave if you enjoyed it: %s.");

    private static final Pattern FROM = Pattern.compile("^Look to the (left|right)");

    private Opening() {}

    /**
     * The call of the first figure, without its full stop.
     *
     * @param called the figure, such as "a loop"
     */
    static String words(Scene scene, String called, Names names, @Nullable Aircraft craft) {
        String who = who(names, craft);
        CatalogueEntry entry = scene.entry();
        if (entry != null && entry.name().equals("take-off")) {
            return "Ready for take-off: " + who;
        }
        if (scene.isRest() || entry == null || entry.family().equals("coming and going")) {
            String look = scene.figure().look();
            String come = names.areSeveral() ? "come" : "comes";
            Matcher side = FROM.matcher(look == null ? "" : look);
            if (side.find() && isOne(craft)) {
                return "Look to the " + side.group(1) + ": here " + come + " " + who;
            }
            return isOne(craft) ? "Here " + come + " " + who : "Please welcome " + who;
        }
        return "Please welcome " + who + ". First, " + called;
    }

    static String goodbye(Names names, @Nullable Aircraft craft, int number) {
        String who = names.known()
                ? who(names, craft).replace(" in an ", " in the ").replace(" in a ", " in the ")
                : names.aircraft();
        return String.format(GOODBYES.get(number % GOODBYES.size()), who);
    }

    private static String who(Names names, @Nullable Aircraft craft) {
        String within = names.full().replaceFirst("^The ", "the ");
        if (!names.known()) {
            return names.introduced();
        }
        return isOne(craft) ? within + ", in " + names.introduced() : within;
    }

    /** Whether one crew sits in one aircraft. */
    private static boolean isOne(@Nullable Aircraft craft) {
        return craft instanceof Airframe
                || (craft instanceof TimedAircraft timed && timed.kind().name().equals("helicopter"));
    }
}
