package crowdline.draft;

import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Kinds;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.aircraft.Typical;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * How those in an act are called. No pronoun stands for the performer anywhere, for nobody said which; a fact that was given in
 * words of its own keeps those it has, but for the first, which would seem to mean whatever was spoken of last.
 *
 * @param full the performer's name, or "the pilot" if nobody gave one
 * @param first what to call the performer once introduced
 * @param known whether the performer's name is known
 * @param introduced the aircraft as it is named first, such as "an old trainer"
 * @param aircraft the aircraft afterwards, such as "the old trainer"
 * @param team the name several are announced by, such as "the Tern Team"; empty if the act has none but their own and the aircraft's
 */
record Names(String full, String first, boolean known, String introduced, String aircraft, String team) {
    private static final Set<String> NOBODY = Set.of("", "the pilot", "pilot", "unknown", "tba", "tbc", "n/a");
    /** What stands before a name, so that the word after it is no first name either. */
    private static final Set<String> NO_FIRST_NAME = Set.of(
            "the", "team", "captain", "capt", "capt.", "major", "dr", "dr.", "mr", "mr.", "mrs", "mrs.", "ms", "ms.",
            "flt", "sqn", "wg", "lt", "lt.", "sir", "dame", "lady", "lord", "les", "los", "die", "duo", "group");

    private static final Pattern SEVERAL = Pattern.compile("(?i) (and|with|&) |, .*");
    private static final Pattern TEAM = Pattern.compile("(?i)the .*[^s]s");

    /** "the Tern Team", "Red Kites": every word that matters has a capital, as nothing has that only says what is flown. */
    private static final Pattern TEAM_NAME = Pattern.compile(
            "(?!(?i:.*\\b(act|ceremony|demo|demonstration|display|drop|finale|fly-?past|jump|opening"
                    + "|routine|sequence|show|slot|solo)\\b))([Tt]he \\p{Lu}\\S*( (of|and|the|&|\\p{Lu}\\S*|\\d+))*|\\p{Lu}\\S*( (of|and|the|&|\\p{Lu}\\S*|\\d+))+)");

    private static final Map<String, String> ONE =
            Map.of("have", "has", "are", "is", "were", "was", "fly", "flies", "teach", "teaches", "live", "lives");
    /** Of one person, with a verb that can be said of one: what is past is the same for both. */
    private static final Pattern THEY =
            Pattern.compile("They (have|are|were|fly|teach|live|[a-z]{2,}ed|learnt|flew|built"
                    + "|began|won|came|got|made|took|grew|left|bought|found|met|spent|taught|led|held|ran)\\b");

    private static final Pattern VERB =
            Pattern.compile("(?i)(has|have|is|was|were|are|built|flew|fly|flies|began|won|holds?|held"
                    + "|taught|grew|ran|run|led|leads?|made|makes?|makes|wrote|drew|chose|came|comes?|works?|lives?|trains?|jumps?|learnt"
                    + "|mends?|[a-z]{2,}ed|teach(es)?|keeps?|walks?|plays?|sings?|paints?|farms?|drives?|sails?|rides?|bakes?|writes?"
                    + "|restores?|designs?|studies|studied|owns?|spent|spends?|can|could|once|still|never|also|always|first|used|bought"
                    + "|found|met|took|gave|went|saw|sold|says?|likes?|loves?|gets?|got|does|did|served?|serves)");

    static Names of(Show show, Act act) {
        String name =
                show.performer(act.performer()).map(Performer::name).orElse("").strip();
        boolean known = !NOBODY.contains(name.toLowerCase(Locale.ROOT));
        Aircraft craft = show.aircraft(act.airframe()).orElse(null);
        String called = craft == null ? "aircraft" : craft.name().strip();
        // Our own name of a kind; to the crowd it is strong enough as it is.
        String bare = called.replaceFirst("(?i)^the ", "").replaceFirst("^strong (?=aerobatic )", "");
        boolean common = Character.isLowerCase(bare.codePointAt(0))
                && !called.toLowerCase(Locale.ROOT).startsWith("the ");
        boolean our = common && isTimed(craft, Kinds.FLY_PAST);
        String with = (our ? "our " : "the ") + bare;
        String introduced = common && !our && !isTimed(craft, Kinds.PARACHUTISTS)
                ? Sentences.withArticle(bare) + (craft instanceof TimedAircraft timed ? howMany(timed) : "")
                : with;
        return new Names(
                known ? name : "the pilot",
                known ? first(name, craft) : "the pilot",
                known,
                introduced,
                with,
                team(act, name, craft));
    }

    /** What an act is called, if that is a name and neither the performer's nor made of the aircraft's. */
    private static String team(Act act, String performer, @Nullable Aircraft craft) {
        String title = act.title().strip();
        boolean named = TEAM_NAME.matcher(title).matches()
                && !title.equalsIgnoreCase(performer)
                && (performer.isEmpty() || !title.contains(performer));
        return named && (isTimed(craft, Kinds.FORMATION) || isTimed(craft, Kinds.PARACHUTISTS))
                ? title.replaceFirst("^The ", "the ")
                : "";
    }

    private static boolean isTimed(@Nullable Aircraft craft, String kind) {
        return craft instanceof TimedAircraft timed && timed.kind().name().equals(kind);
    }

    private static String howMany(TimedAircraft timed) {
        Integer number = timed.number();
        return number == null || number < 2 ? "" : " of " + Called.counted(number);
    }

    /** Everything that is known of who flies the act, as it is said. */
    List<String> facts(Show show, Act act) {
        return show.performer(act.performer()).map(Performer::facts).orElse(List.of()).stream()
                .map(f -> said(f.text()))
                .toList();
    }

    /** Whether one person of that name flies. */
    boolean isPerson() {
        return known && isPerson(full);
    }

    /** The first of two or three names of one person; teams and titles keep all of theirs. */
    private static String first(String name, @Nullable Aircraft craft) {
        boolean alone = craft instanceof Airframe || isTimed(craft, Kinds.HELICOPTER) || isTimed(craft, Kinds.FLY_PAST);
        return alone && isPerson(name) ? name.split("\\s+", 2)[0] : name;
    }

    private static boolean isPerson(String name) {
        List<String> parts = List.of(name.split("\\s+"));
        return parts.size() >= 2
                && parts.size() <= 3
                && !NO_FIRST_NAME.contains(parts.get(0).toLowerCase(Locale.ROOT))
                && parts.stream().allMatch(p -> p.matches("\\p{Lu}[\\p{L}'’-]+"));
    }

    /**
     * A fact about the performer as it is said: what begins with what they do gets their name before it, and so does what begins
     * with a pronoun, as what was said before may have been about the aircraft.
     */
    String said(String fact) {
        String plain = Sentences.stopped(fact.strip());
        Optional<String> ofThing = OfThings.said(plain, aircraft, aircraft.equals("the parachutists"));
        if (ofThing.isPresent()) {
            return ofThing.get();
        }
        String text = named(plain);
        String head = text.split("[\\s,.]", 2)[0];
        if (!VERB.matcher(head).matches()) {
            return text;
        }
        return Sentences.begun(first) + " " + Sentences.within(text);
    }

    /** Whether they are more than one: "Ada and Bram Quillan", "the Tern Team Sisters". */
    boolean areSeveral() {
        return known && (SEVERAL.matcher(full).find() || TEAM.matcher(full).matches());
    }

    private String named(String text) {
        String name = Sentences.begun(first);
        if (areSeveral()) {
            return text;
        }
        Matcher they = THEY.matcher(text);
        if (they.lookingAt()) {
            String verb = ONE.getOrDefault(they.group(1), they.group(1));
            return name + " " + verb + text.substring(they.end());
        }
        return text.replaceFirst("^(She|He) ", Matcher.quoteReplacement(name) + " ")
                .replaceFirst("^(Her|His|Their) ", Matcher.quoteReplacement(name) + "'s ");
    }

    /** Who flies what, such as "Ada Quillan, in the Wren 300". */
    String both() {
        return known ? full + ", in " + introduced : introduced;
    }

    /**
     * What is told of every aircraft of the kind; empty if every number was told.
     */
    static Optional<String> kind(Aircraft craft) {
        if (!(craft instanceof Airframe airframe)) {
            return Optional.empty();
        }
        Typical typical = airframe.typical();
        if (typical == null || typical.assumed().isEmpty()) {
            return Optional.empty();
        }
        return KindWords.of(typical.kind().name());
    }
}
