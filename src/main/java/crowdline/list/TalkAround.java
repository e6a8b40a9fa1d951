package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * What is only talked of above a list that begins with its take-off, or below one that ends with its landing: "I'll run in
 * from your left", "he rolls up to you and shakes your hand".
 */
final class TalkAround {
    /** A sentence with as many figures lists them; if nothing else is listed, one with as many as its second number does. */
    private static final int LEAST_LISTED = 4;

    private static final int LEAST_SAID = 3;

    /** A list of fewer may have more that is flown around it. */
    private static final int LEAST_FLOWN = 5;
    /** More than this is flown, wherever it stands. */
    private static final int MOST_TALKED = 3;

    private final Text text;
    /** A sentence that talks. */
    private record Talk(int end, long figures) {}

    /** By where they begin. */
    private final NavigableMap<Integer, Talk> talks = new TreeMap<>();

    TalkAround(Text text) {
        this.text = text;
    }

    /** Remembers a sentence if it talks. */
    void hear(Sentence sentence, List<Heard> pieces, boolean isTimed) {
        String said = sentence.said(text);
        boolean isSentence = said.endsWith(".")
                || said.endsWith("!")
                || said.endsWith("?")
                || pieces.stream().anyMatch(piece -> Manner.SENTENCE.hasAny(piece.words()));
        if (!sentence.numbered() && !isTimed && isSentence) {
            talks.put(
                    sentence.start(),
                    new Talk(
                            sentence.end(),
                            pieces.stream().filter(Heard::isFigure).count()));
        }
    }

    /** The drafts that are only talked of. */
    List<Draft> talked(List<Draft> drafts) {
        List<Draft> talked = new ArrayList<>();
        int begins = listed(drafts, "take-off", LEAST_LISTED).findFirst().orElse(drafts.size());
        if (drafts.size() - begins >= LEAST_FLOWN) {
            addTalk(drafts.subList(0, begins), talked);
        }
        int ends = listed(drafts, "landing", LEAST_LISTED)
                .reduce((first, second) -> second)
                .orElse(listed(drafts, "landing", LEAST_SAID)
                        .reduce((first, second) -> second)
                        .orElse(-1));
        if (ends + 1 >= LEAST_FLOWN) {
            addTalk(drafts.subList(ends + 1, drafts.size()), talked);
        }
        return talked;
    }

    /** Where the list has a figure, not in a sentence that only talks. */
    private IntStream listed(List<Draft> drafts, String figure, int least) {
        return IntStream.range(0, drafts.size())
                .filter(i -> drafts.get(i).means(figure) && !isTalk(drafts.get(i), least));
    }

    private void addTalk(List<Draft> around, List<Draft> talked) {
        if (around.size() <= MOST_TALKED && around.stream().allMatch(draft -> isTalk(draft, LEAST_LISTED))) {
            talked.addAll(around);
        }
    }

    private boolean isTalk(Draft draft, int least) {
        Map.Entry<Integer, Talk> said = talks.floorEntry(draft.start());
        return said != null
                && draft.start() < said.getValue().end()
                && said.getValue().figures() < least;
    }
}
