package crowdline.list;

import crowdline.list.piece.Heard;
import crowdline.list.word.Manner;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Tells of words without a figure that they say something of the day, the aircraft or the pilot: "Ceiling 1200 ft", "Weight 900 kg". */
final class Facts {
    /** Of what nobody flies, wherever it stands. */
    private static final Set<String> SUBJECTS = Set.of(
            "ceiling",
            "cloud",
            "cloudbase",
            "overcast",
            "wind",
            "weather",
            "visibility",
            "temperature",
            "radio",
            "frequency",
            "channel",
            "emergency",
            "weight",
            "mass",
            "engine",
            "horsepower",
            "span",
            "wingspan",
            "fuel",
            "oil",
            "crew",
            "name",
            "age",
            "born",
            "registration",
            "insurance",
            "licence",
            "license",
            "authorisation",
            "authorization",
            "phone",
            "mobile",
            "email",
            "mail",
            "fee",
            "music",
            "song",
            "callsign",
            "built",
            "hour",
            "limit",
            "vne",
            "qnh",
            "qfe",
            "briefing",
            "hangar",
            "tea",
            "lunch");

    private static final Set<String> MUSIC = Set.of("music", "song", "soundtrack", "track", "tune");

    /** Of a figure as well, behind its name. */
    private static final Set<String> OF_ALL =
            Set.of("duration", "length", "base", "box", "floor", "minimum", "min", "height", "altitude");

    /** "Top speed" is a number of the aircraft. */
    private static final Set<String> EXTREMES =
            Set.of("top", "max", "maximum", "stall", "stalling", "cruise", "cruising");

    private static final Set<String> QUANTITIES = Set.of("speed", "weight", "g", "rate", "power", "height");

    /** What is longer tells more. */
    private static final int LONGEST = 12;

    private static final Pattern ABOUT =
            Pattern.compile("(?:the|my|our|its|his|her) (?:" + String.join("|", SUBJECTS) + ")\\b.*");

    /** "Min height flypast: 100 ft": what is allowed, of all the figures of a name. */
    private static final Pattern LIMIT = Pattern.compile(
            "\\W*(?:min(?:imum)?|max(?:imum)?|lowest|highest)\\.? (?:height|alt|altitude|base|speed|g)\\b[^:\n]*:.*"
                    + "|\\W*(?:the )?(?:clock|watch|stopwatch|times?|timings?) (?:starts?|runs?|begins?|(?:is|are) (?:run|counted|taken|from))\\b.*"
                    + "|\\W*(?:the |display |aerobatic )*base (?:for|is|of|height)\\b.*"
                    + "|\\W*all (?:distances|directions|sides)\\b.*"
                    + "|\\W*(?:all )?(?:the )?(?:heights|altitudes|speeds|times|timings) (?:are|given|quoted|in|as)\\b.*",
            Pattern.DOTALL);

    private Facts() {}

    /** Whether a sentence only says between what limits everything is flown. */
    static boolean isLimit(String said) {
        return LIMIT.matcher(said).matches();
    }

    /** "The engine has injection, so it runs upside down": told of something nobody flies, whatever figure it names. */
    static boolean isAbout(String said) {
        return ABOUT.matcher(said).matches();
    }

    /** "Music starts with the dive please": what sounds, though a figure is named. */
    static boolean isOfMusic(Heard first) {
        return first.words().stream()
                .filter(word -> !Manner.FILLER.has(word))
                .findFirst()
                .filter(word -> MUSIC.contains(word.plain()))
                .isPresent();
    }

    /**
     * Whether a piece states one.
     *
     * @param isFirst whether no figure came yet, so that a height is that of all the list
     */
    static boolean isOne(Heard piece, boolean isFirst) {
        List<Word> words = piece.words().stream()
                .filter(word -> !Manner.FILLER.has(word) || OF_ALL.contains(word.plain()))
                .filter(word -> Character.isLetterOrDigit(word.plain().charAt(0)))
                .toList();
        if (piece.isFigure() || words.size() < 2 || words.size() > LONGEST) {
            return false;
        }
        String first = words.get(0).plain();
        String second = words.get(1).plain();
        boolean isMeasured = words.stream().anyMatch(word -> word.number() != null);
        return SUBJECTS.contains(first)
                || (isMeasured && SUBJECTS.contains(second) && !Manner.FLOWN.has(first))
                || (isMeasured && EXTREMES.contains(first) && QUANTITIES.contains(second))
                || (isFirst && isMeasured && OF_ALL.contains(first));
    }
}
