package crowdline.draft;

import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Kinds;
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
        boolean comes = scene.isRest() || entry == null || entry.family().equals("coming and going");
        String come = (names.areSeveral() ? "come " : "comes ") + who;
        if (isKind(craft, Kinds.FLY_PAST)) {
            return "Here " + come + (comes ? "" : ", with " + called);
        }
        if (comes) {
            String look = scene.figure().look();
            Matcher side = FROM.matcher(look == null ? "" : look);
            if (side.find() && isOne(craft)) {
                return "Look to the " + side.group(1) + ": here " + come;
            }
            return isOne(craft) ? "Here " + come : "Please welcome " + who;
        }
        return "Please welcome " + who + ". First, " + called;
    }

    static String goodbye(Names names, @Nullable Aircraft craft, int number) {
        String who = !names.team().isEmpty()
                ? names.team()
                : !names.known() ? names.aircraft() : within(names) + (isOne(craft) ? ", in " + names.aircraft() : "");
        return String.format(GOODBYES.get(number % GOODBYES.size()), who);
    }

    /** Where the last figure is too short for more. */
    static String briefGoodbye(Names names) {
        return "Thank you, "
                + (!names.team().isEmpty() ? names.team() : names.known() ? within(names) : names.aircraft()) + ".";
    }

    /** Who flies what, as an act is opened: "Ada Quillan, in the Wren 300", "the Tern Team, with Ada Quillan". */
    static String who(Names names, @Nullable Aircraft craft) {
        if (!names.team().isEmpty()) {
            return names.team() + (names.known() ? ", with " + within(names) : "");
        }
        if (!names.known()) {
            return names.introduced();
        }
        if (isOne(craft)) {
            return within(names) + ", in " + names.introduced();
        }
        if (isKind(craft, Kinds.FORMATION)) {
            return within(names) + (names.isPerson() ? ", with " : ", ") + names.introduced();
        }
        return within(names);
    }

    private static String within(Names names) {
        return names.full().replaceFirst("^The ", "the ");
    }

    private static boolean isKind(@Nullable Aircraft craft, String kind) {
        return craft instanceof TimedAircraft timed && timed.kind().name().equals(kind);
    }

    /** Whether one crew sits in one aircraft. */
    private static boolean isOne(@Nullable Aircraft craft) {
        return craft instanceof Airframe || isKind(craft, Kinds.HELICOPTER);
    }
}
