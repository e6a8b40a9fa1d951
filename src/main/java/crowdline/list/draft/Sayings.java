package crowdline.list.draft;

import crowdline.list.line.Place;
import crowdline.list.line.Side;
import crowdline.list.line.Sided;
import crowdline.list.name.Names;
import crowdline.measure.Units;
import crowdline.show.figure.Placing.Heading;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;

/**
 * Finds what a piece says of its figure: where, which way, how high, how fast, how long, how often. It looks at the plain
 * words, one space between them, with {@value #FIGURE} in place of the figure's name, and takes the words it understood.
 */
public final class Sayings {
    public static final String FIGURE = "¤";

    static final String NUM = "(\\d+(?:\\.\\d+)?)";
    private static final String RANGE = "(?:" + NUM + " (?:to |or |and ))?" + NUM;
    private static final String ABOUT =
            "about|around|approximately|approx|roughly|circa|say|not|below|above|over|under|of|the|a|to|up|minimum|min|max|maximum"
                    + "|like|maybe|probably|call it|call|just|nearly|almost|exactly|some|only|good|best part|least|most|or so|i guess|i think|perhaps";
    private static final String FOR =
            "(?:(?:for|last|lasting|take|taking|time|timed|duration|it|that|there|hold|holding|held|stay|staying|me|him|her|us|"
                    + ABOUT + ") )*";
    private static final String HIGH =
            "(?:(?:at|from|base|based|height is|height|alt|altitude|level|down|in|" + ABOUT + ") )*";
    private static final String FAST =
            "(?:(?:at|from|entry|enter|entering|with|speed is|speed|in|running|" + ABOUT + ") )*";
    static final String CROWD = "(?:the )?(?:crowd|audience|public|spectator|people|us)(?: line)?";
    private static final String WHOSE =
            "(?:crowd |display |stage |show |airshow |air show |audience |far |extreme |commentator |your |our |own )*";
    private static final String HAND = "(?: / h)?(?: hand(?:ed)?)?";
    /** "At the right end to the left" says where, and which way it turns. */
    private static final String NOT_AT = "(?<!at )(?<!at the )";

    /** "Spin, recovering by 1000 ft" says where it ends, which is not how high it begins. */
    private static final String NOT_OUT =
            "(?<!(?:exit|exiting|recover|recovering|recovered|recovery|out|finishing) (?:(?:by |at |above |to )?(?:about |around )?|no lower than |not below ))";

    private static final String ONE_WAY = "(?<!left and )(?<!right and )";
    private static final String ONLY = "(?! and (?:left|right) )";
    /** Nothing lasts as many minutes: it is an hour of the day. */
    private static final double FIRST_HOUR = 7;

    private static final String COLOUR = "(?:white|red|blue|green|yellow|orange|purple|pink|black|colour)";
    private static final String LEFT_OR_RIGHT = "(left|right)";

    private final List<Saying> anywhere = new ArrayList<>(Tops.sayings());
    private final List<Saying> ofTheFigure = new ArrayList<>();

    public Sayings() {
        anywhere.add(Formations.saying());
        anywhere.add(Yawing.saying());
        approaches();
        headings();
        places();
        numbers();
        smoke();
        sides();
        Counts.add(anywhere, ofTheFigure);
    }

    /** "Pull up into a stall turn" is a stall turn. */
    private void approaches() {
        add(
                " right ",
                "(?<=^ )right (?=so |then |first |well )|right (?=after |before |away |behind |there )",
                (draft, found) -> true);
        add(
                " into | for | to ",
                "(?:pull|pulling|straight|back|then|and|hard|gently|steeply|right) (?:straight )?(?:up )?(?:hard"
                        + " |gently |steeply )?(?:into|for|to)(?= (?:a |the )?¤)",
                (draft, found) -> true);
    }

    private void headings() {
        String arriving =
                "(?:(?:direction|way|heading|side|in|on|coming|come|back|enter|entering|entry|arriving|arrive|arrival|run|running|flying|from|direction)"
                        + " )*";
        add(
                "left",
                NOT_AT + arriving + "(?:the )?" + WHOSE + "left" + HAND + "(?: end| side)? (?:to |2 |> |a )(?:the )?"
                        + WHOSE + "right" + HAND + "(?: end| side)?",
                heading(Heading.RIGHT));
        add(
                "right",
                NOT_AT + arriving + "(?:the )?" + WHOSE + "right" + HAND + "(?: end| side)? (?:to |2 |> |a )(?:the )?"
                        + WHOSE + "left" + HAND + "(?: end| side)?",
                heading(Heading.LEFT));
        add("left", "(?:going|heading|flying|moving|travelling) left" + HAND + "(?! end)", heading(Heading.LEFT));
        add("right", "(?:going|heading|flying|moving|travelling) right" + HAND + "(?! end)", heading(Heading.RIGHT));
        add("lefttoright", arriving + "lefttoright", heading(Heading.RIGHT));
        add("righttoleft", arriving + "righttoleft", heading(Heading.LEFT));
        add(
                " from ",
                arriving + "(?:in )?from (?:the )?" + WHOSE + "left" + HAND + "(?: side| end)?",
                heading(Heading.RIGHT));
        add(
                " from ",
                arriving + "(?:in )?from (?:the )?" + WHOSE + "right" + HAND + "(?: side| end)?",
                heading(Heading.LEFT));
        add(
                " from ",
                arriving + "from (?:over and )?(?:behind|over) (?:you|your head|" + CROWD + ")",
                heading(Heading.AWAY));
        add("left", "back (?:toward|to) the left(?! end)", heading(Heading.LEFT));
        add("right", "back (?:toward|to) the right(?! end)", heading(Heading.RIGHT));
        add(
                " from ",
                arriving + "from (?:behind|(?:the )?(?:crowd |display )?rear)(?= $| in | with )",
                heading(Heading.AWAY));
        addOfFigure(
                " away ",
                "away(?= $)",
                (draft, found) -> draft.sense() != null
                        && Measured.isPass(draft)
                        && heading(Heading.AWAY).say(draft, found));
        add(
                " from ",
                "(?:in |flying |heading |directly |straight )*(?:away from|out from) " + CROWD,
                heading(Heading.AWAY));
        anywhere.add(Facing.saying());
        add(
                " toward | at ",
                "(?:in |flying |heading |directly |straight |head on )*(?:toward|at) " + CROWD
                        + "(?! (?:centre|left|right) )",
                heading(Heading.CROWD));
        add("front|head|crowd", "(?:in )?(?:from (?:the )?front|head on|crowd on)", heading(Heading.CROWD));
    }

    private static Saying.Meaning heading(Heading heading) {
        return said(Detail.HEADING, heading);
    }

    static Saying.Meaning said(Detail detail, Object value) {
        return (draft, found) -> {
            draft.say(detail, value);
            return true;
        };
    }

    private void places() {
        add(
                "length",
                "(?:along )?(?:the )?(?:full|whole|entire) length(?: of)?(?: the)?(?: (?:display|crowd|show))?(?: (?:line|runway))?",
                (draft, found) -> true);
        String at = "(?:(?:place|position|where|location|at|on|by|in|to|over|near|toward|for|is|flown|down|up|out)"
                + " )*(?:the )?";
        String end = "(?:end|side|edge|corner|extremity|turnaround)";
        for (Place place : List.of(Place.LEFT_END, Place.RIGHT_END)) {
            String side = place == Place.LEFT_END ? "left" : "right";
            add(side, "(?<= to the )" + side + " side", (draft, found) -> isRolling(draft) && side(draft, side));
            add(
                    side,
                    at + WHOSE + side + HAND + " " + end
                            + "(?: of (?:the )?(?:display|crowd|line|box|show|runway)(?: line)?)?",
                    said(Detail.PLACE, place));
            add(side, "(?:at )?" + side + "end", said(Detail.PLACE, place));
            add(
                    side,
                    at + "(?:far|near|other) end (?:on )?(?:your|the|our|crowd|my) " + side,
                    said(Detail.PLACE, place));
            add(side, "(?:(?<=¤[· a-z]{0,40} )(?<!to )|(?<=^ ))your " + side + "(?= $)", said(Detail.PLACE, place));
            add(side, "(?:place|position|where|end) " + side + HAND, said(Detail.PLACE, place));
            add(
                    side,
                    "(?:at|on|over) (?:the )?" + WHOSE + side + HAND,
                    (draft, found) -> (found.group().equals("on " + side) && isRolling(draft))
                            ? side(draft, side)
                            : said(Detail.PLACE, place).say(draft, found));
            add(side, at + "(?:far|crowd|display|stage|show|audience|extreme) " + side, said(Detail.PLACE, place));
        }
        String over =
                "(?:(?:place|position|where|at|in|on|over|by|to|toward|above|abeam|across|overhead|directly|right|around|about|flown)"
                        + " )*(?:the )?";
        add(
                "centre|datum|mid",
                over
                        + "(?:dead |airshow |air show |display |crowd |show |stage |box |line )*(?:centre|datum|mid"
                        + " point|midpoint|midfield)(?: (?:line|stage|point|crowd|datum|of (?:the"
                        + " )?(?:display|crowd|line|show|box)(?: line)?))*",
                said(Detail.PLACE, Place.CENTRE));
        add(
                "front",
                "(?:(?<!to the )right |directly |just |back )*in front(?: of " + CROWD
                        + "| of (?:the )?(?:datum|everyone|everybody|commentary))?",
                said(Detail.PLACE, Place.CENTRE));
        add(
                "middle",
                "(?:(?:in|at|over) (?:the )?)?middle(?: of (?:the )?(?:display|crowd|line|show|box)(?: line)?)?",
                said(Detail.PLACE, Place.CENTRE));
        add(" c ", "c(?= $)", said(Detail.PLACE, Place.CENTRE));
        add("overhead", "overhead", said(Detail.PLACE, Place.CENTRE));
    }

    private void numbers() {
        String kt = "(?: (?:entry|speed|ia|on entry|indicated|to start|or so))*";
        add(
                " kt ",
                "(?<!exit )(?<!exit at )(?<!exit speed )" + FAST + RANGE + " kt" + kt,
                Measured.measured(Detail.ENTRY_KT, v -> v));
        add(
                " mph | mile ",
                FAST + RANGE + " (?:mph|mile (?:an|per|a|/) hour)" + kt,
                Measured.measured(Detail.ENTRY_KT, v -> Math.rint(Units.ktFromMps(Units.mpsFromKmh(v * 1.609344)))));
        add(
                " k",
                FAST + RANGE + " (?:km / h|kmh|kph|km h|km)" + kt,
                Measured.measured(Detail.ENTRY_KT, v -> Math.rint(Units.ktFromMps(Units.mpsFromKmh(v)))));
        String high = "(?: (?:agl|high|height|base|minimum|min|above ground|or so))*";
        add(" ft ", NOT_OUT + HIGH + RANGE + " ft" + high, Measured.measured(Detail.HEIGHT_FT, v -> v));
        add(" agl ", NOT_OUT + HIGH + RANGE + " agl", Measured.measured(Detail.HEIGHT_FT, v -> v));
        add(
                " metre ",
                NOT_OUT + HIGH + RANGE + " metre" + high,
                Measured.measured(Detail.HEIGHT_FT, v -> Math.rint(Units.ftFromM(v))));
        add(
                ":",
                "(?<!at )" + FOR + "(\\d{1,2}):(\\d{2})(?: (?:min|m))?",
                (draft, found) -> Measured.group(found, 1) < FIRST_HOUR
                        && Measured.number(
                                draft, Detail.SECONDS, Measured.group(found, 1) * 60 + Measured.group(found, 2)));
        add(
                " min | m ",
                FOR + NUM + " (?:min|m) (?:and )?" + NUM + "(?: s)?",
                (draft, found) -> Measured.number(
                        draft, Detail.SECONDS, Measured.group(found, 1) * 60 + Measured.group(found, 2)));
        add(
                " m ",
                HIGH + RANGE + " m (?:high|height|agl|above ground|above the ground)",
                Measured.measured(Detail.HEIGHT_FT, v -> Math.rint(Units.ftFromM(v))));
        add(" min | m ", FOR + RANGE + " (?:min|m)", (draft, found) -> {
            double last = Measured.group(found, 2);
            boolean isMetres =
                    found.group().endsWith(" m") && (last >= 10 || Measured.isAPass(draft) || draft.means("hover"));
            return isMetres
                    ? Measured.number(draft, Detail.HEIGHT_FT, Math.rint(Units.ftFromM(last)))
                    : Measured.number(draft, Detail.SECONDS, Measured.middle(found) * 60);
        });
        add(" min ", FOR + "half (?:a |an )?min", said(Detail.SECONDS, 30.0));
        add(" min ", FOR + "(?:a )?quarter (?:of )?(?:a )?min", said(Detail.SECONDS, 15.0));
        add(" min ", FOR + "three-quarter (?:of )?(?:a )?min", said(Detail.SECONDS, 45.0));
        add(" min ", FOR + "(?:a |1 )?min and (?:a )?half", said(Detail.SECONDS, 90.0));
        add(" min ", FOR + "a min", said(Detail.SECONDS, 60.0));
        // From one aircraft to the next.
        add(
                "between|apart|spacing|separation|interval",
                FOR + RANGE + " s (?:between|apart|spacing|separation|interval)(?: (?:each|them|aircraft))?",
                (draft, found) -> true);
        add(" s ", "(?<!with )" + FOR + RANGE + " s(?: or so)?", Measured.measured(Detail.SECONDS, v -> v));
        add(
                "time|duration|length",
                "(?<=^ )(?:time|duration|length) " + NUM + "(?= $)",
                (draft, found) -> Measured.number(draft, Detail.SECONDS, Measured.group(found, 1)));
        bareNumbers();
    }

    /** Numbers without a unit, which the word before them or after them says enough of. */
    private void bareNumbers() {
        addOfFigure(" / ", Measured.PAIR, Measured.speedAndHeight());
        String end = "(?= $| ·| and | then | left| right| from )";
        add(
                "speed|entry|enter",
                "(?:at )?(?:entry speed|entry at|enter at|speed of|speed|entry) " + NUM + end,
                Measured.bareSpeed());
        add(" entry| in ", NUM + " (?:entry|on entry|at entry|in(?= $))", Measured.bareSpeed());
        add(
                "height|base|alt|floor",
                "(?:height|base|altitude|alt|floor) (?:of |at )?" + NUM + end,
                Measured.bareHeight(Measured.LEAST_CALLED_FT));
        add(" at | to | from ", NOT_OUT + "(?:at|to|from|up to|down to) " + NUM + end, Measured.bareHeight());
        addOfFigure("¤", "(?<=¤[·/ ]{0,40} )" + NUM + "(?=(?: [·/]+)* $)", Measured.bareHeight());
        addOfFigure(
                "¤",
                "(?<=¤[·/ ]{0,40} )" + NUM + "(?=(?: [·/]+)* $)",
                (draft, found) -> !Measured.isAngle(draft, Measured.group(found, 1))
                        && Measured.bareSpeed().say(draft, found));
        addOfFigure(
                " at | from ",
                "(?:at|from) (?:(?:about|around|roughly|approximately|nearly|just|over|under) )*" + NUM + end,
                (draft, found) -> (!Measured.isPass(draft) || Measured.isNoPassHeight(Measured.group(found, 1)))
                        && Measured.bareSpeed().say(draft, found));
    }

    private void smoke() {
        add("smoke", "(?:with )?(?:no|without|minus) smoke", said(Detail.SMOKE, false));
        add("smoke", "smoke (?:off|out|stop|end)", said(Detail.SMOKE, false));
        add(
                "smoke",
                "(?:with |trailing |the |and |" + COLOUR + " )*smoke(?: " + COLOUR
                        + ")*(?: (?:on|system on|go|running))?(?: for)?",
                said(Detail.SMOKE, true));
    }

    private void sides() {
        addOfFigure(
                "left|right",
                ONE_WAY + "(?:to |toward )(?:the |your |my |our )?" + LEFT_OR_RIGHT + HAND + ONLY,
                Sayings::toTheSide);
        addOfFigure("left|right", ONE_WAY + "(?:the )?(?:pilot )?" + LEFT_OR_RIGHT + HAND + ONLY, Sayings::side);
    }

    /** Where something flies along, it flies to that side; else see {@link #side}. */
    private static boolean toTheSide(Draft draft, Matcher found) {
        Names.Sense sense = draft.sense();
        if (sense != null && Sided.fliesAlong(sense.figure())) {
            draft.say(Detail.HEADING, found.group(1).equals("left") ? Heading.LEFT : Heading.RIGHT);
            return true;
        }
        return side(draft, found);
    }

    /** What turns or rolls does so to that side; anything else is flown at that end. */
    private static boolean side(Draft draft, Matcher found) {
        return side(draft, found.group(1));
    }

    /** "Spin on left". */
    private static boolean isRolling(Draft draft) {
        Names.Sense sense = draft.sense();
        return sense != null
                && (sense.figure().endsWith("spin") || sense.figure().endsWith("roll"));
    }

    private static boolean side(Draft draft, String side) {
        boolean isLeft = side.equals("left");
        Names.Sense sense = draft.sense();
        if (draft.means("sideways flight")) {
            draft.say(Detail.HEADING, isLeft ? Heading.LEFT : Heading.RIGHT);
        } else if (sense == null || Sided.turns(sense.figure())) {
            draft.say(Detail.SIDE, isLeft ? Side.LEFT : Side.RIGHT);
        } else {
            draft.say(Detail.PLACE, isLeft ? Place.LEFT_END : Place.RIGHT_END);
        }
        return true;
    }

    private void add(String needs, String regex, Saying.Meaning meaning) {
        anywhere.add(Saying.of(needs, regex, meaning));
    }

    private void addOfFigure(String needs, String regex, Saying.Meaning meaning) {
        ofTheFigure.add(Saying.of(needs, regex, meaning));
    }

    /**
     * Says in the draft what the words say.
     *
     * @param words plain words, null where one is taken already
     * @param extrasFrom from which word on something else is said than of the figure; how many words there are if none
     * @return which words it took
     */
    public boolean[] take(Draft draft, List<String> words, int extrasFrom) {
        boolean[] taken = new boolean[words.size()];
        Saying.take(anywhere, draft, words, words.size(), taken);
        Saying.take(ofTheFigure, draft, words, extrasFrom, taken);
        return taken;
    }
}
