package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.draft.Formations;
import crowdline.list.name.Names;
import crowdline.list.word.Text;
import crowdline.list.word.Words;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** What a team flies while it is together: "team of 4 … reform diamond, barrel roll left" rolls all four. */
final class Together {
    private static final Pattern TEAM = Pattern.compile(
            "\\b(?:three|four|five|six|seven|eight|nine|[3-9]) (?:aircraft|aeroplanes|planes|jets|biplanes|ships)\\b|\\b(?:trio|quartet|quintet|(?:team|formation|display|trio|section) of (?:[3-9]|three|four|five|six|seven|eight|nine))\\b|\\b(?:[3-9]|three|four|five|six|seven|nine)[- ]ship\\b"
                    + "|\\b(?:(?:we|they|team|who) are (?:three|four|five|six|seven|nine)|\\w+s are (?:three|four|five|six|seven|nine)(?= (?:this|now|again|today|in|of)\\b)|there are (?:three|four|five|six|seven|nine) (?:of us|aircraft|aeroplanes|pilots))\\b");

    private static final Pattern PAIR =
            Pattern.compile("\\b(?:duo|pair|pilots|wingm[ae]n|no\\.? ?2|number (?:2|two)|two[- ]ship)\\b");

    private static final Pattern ALONE = Pattern.compile(
            "\\W*(?:(?:go|goes|going|change|back) )?(?:in|into|to)?\\W*(?:a |the )?(?:vic|diamond|box|arrow(?:head)?|delta|swan|card|line abreast|line astern|echelon(?: left| right)?)\\W*");

    /** In which all are together, or come together. */
    private static final Set<String> JOINED =
            Set.of("join-up", "changing shape", "formation pass", "formation loop", "formation roll");

    /** Flown by some of them. */
    private static final Pattern SOME = Pattern.compile(
            "\\b(?:solos?|singletons?|pair|synchro|no\\.? ?\\d|number (?:\\d|one|two|three|four|five|six)|lead(?:er)?|wingm[ae]n)\\b");

    private static final Pattern SHAPE =
            Pattern.compile("\\b(?:diamond|box|vic|arrow|delta|swan|card|line abreast|line astern|echelon)\\b");

    /** "Barrel roll (4)": so many fly it. */
    private static final Pattern HOW_MANY = Pattern.compile("\\((?:[3-9]|[3-9] (?:aircraft|ships?|a/c))\\)");

    private Together() {}

    /** Makes of the figures of a team, as long as it is together, those that several fly. */
    static void fly(List<Draft> drafts, Text text) {
        boolean isTeam = TEAM.matcher(text.folded()).find();
        if (isTeam || PAIR.matcher(text.folded()).find()) {
            drafts.stream().filter(Together::isSplit).forEach(draft -> mean(draft, "synchro split"));
        }
        if (!isTeam) {
            return;
        }
        boolean areTogether = false;
        for (Draft draft : drafts) {
            Names.Sense sense = draft.sense();
            if (sense == null) {
                if (ALONE.matcher(Words.folded(draft.written(text))).matches()) {
                    mean(draft, "changing shape");
                    areTogether = true;
                }
                continue;
            }
            String written = Words.folded(draft.written(text));
            boolean isOfAll = !SOME.matcher(written).find();
            if (isOfAll && (areTogether || SHAPE.matcher(written).find())) {
                Formations.flyTogether(draft);
            }
            if (JOINED.contains(figure(draft)) && HOW_MANY.matcher(written).find()) {
                draft.unsay(Detail.COUNT);
            }
            areTogether = JOINED.contains(figure(draft));
        }
    }

    /** A pair's "split" by that word alone is no half roll and pull through. */
    private static boolean isSplit(Draft draft) {
        return draft.means("split S") && draft.name().size() == 1;
    }

    private static void mean(Draft draft, String figure) {
        draft.mean(Names.Sense.of(figure));
    }

    private static String figure(Draft draft) {
        Names.Sense sense = draft.sense();
        return sense == null ? "" : sense.figure();
    }
}
