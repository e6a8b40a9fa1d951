package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.draft.Formations;
import crowdline.list.name.Names;
import crowdline.list.piece.Points;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import crowdline.show.figure.Placing.Heading;
import java.util.List;
import java.util.Set;

/** What is flown by what is said of it, where it has no name of a figure or the name of another. */
final class Meant {
    private static final Names.Sense PASS = Names.Sense.of("low pass");
    private static final Names.Sense FORMATION_PASS = Names.Sense.of("formation pass");
    private static final Names.Sense CROSSING = Names.Sense.of("opposition pass");
    private static final Names.Sense CLIMB = Names.Sense.of("climb");

    /** Who fly it together. */
    private static final Set<String> SEVERAL = Set.of("pair", "formation", "three", "both", "all");

    private static final Set<String> CROSSES = Set.of("cross", "crossing");

    private static final Set<String> STRAIGHT_UP = Set.of("vertical", "straight");

    private Meant() {}

    static void read(List<Draft> drafts, Text text) {
        for (Draft draft : drafts) {
            if (draft.sense() == null && isMeasured(draft)) {
                List<Word> words = Words.of(Words.folded(draft.written(text)));
                if (!words.isEmpty() && CROSSES.contains(words.get(0).plain())) {
                    guess(draft, CROSSING);
                } else if (isAlongTheLine(draft)) {
                    guess(draft, isOfSeveral(words) ? FORMATION_PASS : PASS);
                }
            } else if (draft.means("pull to vertical")
                    && draft.says(Detail.TOP_FT)
                    && draft.name().stream().noneMatch(word -> STRAIGHT_UP.contains(word.plain()))) {
                draft.mean(CLIMB);
            } else if (draft.means("four-point roll") && draft.said(Detail.COUNT) instanceof Double points) {
                count(draft, points);
            }
        }
    }

    /** "Point roll - 8": the number counts its points, where its name has none. */
    private static void count(Draft roll, double points) {
        Names.Sense meant = Points.roll(points);
        if (meant != null && roll.name().stream().allMatch(word -> word.number() == null)) {
            roll.mean(meant);
            roll.unsay(Detail.COUNT);
        }
    }

    /** "Bomber alone, doors open, R-L, 300 ft": past the crowd one way at a height or a speed is a pass, whatever it is called. */
    private static boolean isAlongTheLine(Draft draft) {
        return draft.said(Detail.HEADING) == Heading.LEFT || draft.said(Detail.HEADING) == Heading.RIGHT;
    }

    private static boolean isMeasured(Draft draft) {
        return draft.says(Detail.ENTRY_KT) || draft.says(Detail.HEIGHT_FT);
    }

    private static boolean isOfSeveral(List<Word> words) {
        return words.stream().anyMatch(word -> SEVERAL.contains(word.plain()) || Formations.isShape(word.plain()));
    }

    /** Asks whether it is that. */
    private static void guess(Draft draft, Names.Sense sense) {
        draft.mean(sense);
        draft.orElse(List.of(sense.figure()));
    }
}
