package crowdline.list.draft;

import crowdline.list.line.Sided;
import crowdline.list.name.Names;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;

/** How often a figure is flown, or how many turns, points or rolls it has. */
final class Counts {
    private final List<Saying> anywhere;
    private final List<Saying> ofTheFigure;

    private Counts(List<Saying> anywhere, List<Saying> ofTheFigure) {
        this.anywhere = anywhere;
        this.ofTheFigure = ofTheFigure;
    }

    /** Adds the ways to say so to those that count anywhere, and to those that count where a figure is named. */
    static void add(List<Saying> anywhere, List<Saying> ofTheFigure) {
        new Counts(anywhere, ofTheFigure).counts();
    }

    private void counts() {
        String turn =
                "(?: (?:full|complete|upright|big|whole))? (?:turn|rotation|rev|revolution|time round|round(?= $| to | left | right | · )|goe)(?: of| in| to| or so)?";
        addOfFigure(
                " turn | rotation ",
                Sayings.NUM + " (?:or|to|and|maybe|perhaps?|possibly) " + Sayings.NUM + " (?:turn|rotation)",
                oneOfTwo(2));
        addOfFigure(
                " turn | rotation ",
                Sayings.NUM + " (?:turn|rotation) (?:or|maybe|perhaps?|possibly) (?:even )?" + Sayings.NUM
                        + "(?: turn| rotation)?",
                oneOfTwo(1));
        addOfFigure(
                " turn | rotation | rev| round | goe ",
                "(?:of |x |for |with |do |in |a |full )*" + Sayings.NUM + turn,
                count(1));
        addOfFigure(" turn ", "(?:a )?half turn", Sayings.said(Detail.COUNT, 0.5));
        addOfFigure(" turn ", "(?:a )?quarter turn", Sayings.said(Detail.COUNT, 0.25));
        addOfFigure(" turn ", "(?:three-quarter|3 quarter) turn", Sayings.said(Detail.COUNT, 0.75));
        add(
                "turn|rotation|count|qty|quantity|time",
                "(?<=^ )(?:turn|rotation|count|qty|quantity|time) " + Sayings.NUM + "(?= $)",
                count(1));
        addOfFigure(" pair | couple ", "(?:a )?(?:pair of|couple(?: of)?) (?=¤)", Sayings.said(Detail.COUNT, 2.0));
        addOfFigure("double|twin", "(?:double|twin) (?=¤)", Sayings.said(Detail.COUNT, 2.0));
        addOfFigure("triple", "triple (?=¤)", Sayings.said(Detail.COUNT, 3.0));
        addOfFigure(
                "¤",
                "(?<!last )(?<!next )(?<!first )(?<!\\d and )(?:x )?" + Sayings.NUM
                        + " (?!ship|doe |goe |flie |aircraft|aeroplane|plane|man |g |sided |cornered |diamond |box )(?:x |time |consecutive |successive |more"
                        + " )?(?=(?:[a-z]+ ){0,3}¤)",
                (draft, found) -> !(isOfTwo(draft) && Measured.group(found, 1) > 2) && count(1).say(draft, found));
        addOfFigure(" x | time ", "(?:x |time )" + Sayings.NUM, count(1));
        addOfFigure(" x | time | in a row| off | piece ", Sayings.NUM + "(?: x| time| in a row| off| piece)", count(1));
        addOfFigure(
                "¤",
                "(?<=¤[·/ ]{0,40} )" + Sayings.NUM + "(?= $| left| right| to | ·)",
                (draft, found) -> isWhichPass(draft) || (!isOfTwo(draft) && count(1).say(draft, found)));
        addOfFigure(
                "half|quarter|three-quarter",
                "(half|quarter|three-quarter)(?= ¤| $)",
                (draft, found) -> hasRolls(draft) && Measured.number(draft, Detail.COUNT, share(found.group(1))));
        addOfFigure(" row ", "in a row", (draft, found) -> true);
        addOfFigure(" of ", Sayings.NUM + " of(?: them|(?= $))", count(1));
        addOfFigure("twice", "twice", Sayings.said(Detail.COUNT, 2.0));
        addOfFigure("thrice", "thrice", Sayings.said(Detail.COUNT, 3.0));
    }

    /** "3 and 4 mirror": who flies it. */
    private static boolean isOfTwo(Draft draft) {
        Names.Sense sense = draft.sense();
        return sense != null
                && Set.of("mirror pass", "opposition pass", "synchro split", "bomb burst")
                        .contains(sense.figure());
    }

    /** "Pass 2": which of several. */
    private static boolean isWhichPass(Draft draft) {
        List<Word> name = draft.name();
        return Measured.isAPass(draft)
                && !name.isEmpty()
                && name.get(name.size() - 1).end() - name.get(name.size() - 1).start() == "pass".length();
    }

    private static boolean hasRolls(Draft draft) {
        Names.Sense sense = draft.sense();
        return sense != null
                && (Sided.hasRollsOnALine(sense.figure()) || sense.figure().endsWith("spin"));
    }

    private static double share(String fraction) {
        return fraction.equals("half") ? 0.5 : fraction.equals("quarter") ? 0.25 : 0.75;
    }

    private static Saying.Meaning count(int group) {
        return (draft, found) -> Measured.group(found, group) <= 20
                && Measured.number(draft, Detail.COUNT, Measured.group(found, group));
    }

    /** Of "two or three turns" the last, of "three turns, maybe four" the first: which it is has to be asked. */
    private static Saying.Meaning oneOfTwo(int group) {
        return (draft, found) -> {
            boolean isSaid = count(group).say(draft, found);
            if (isSaid) {
                draft.doubt();
            }
            return isSaid;
        };
    }

    private void add(String needs, String regex, Saying.Meaning meaning) {
        anywhere.add(Saying.of(needs, regex, meaning));
    }

    private void addOfFigure(String needs, String regex, Saying.Meaning meaning) {
        ofTheFigure.add(Saying.of(needs, regex, meaning));
    }
}
