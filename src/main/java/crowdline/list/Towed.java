package crowdline.list;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** What words mean where a glider is towed up: it lets go once, as high as it was towed, and what is said of that later is talk. */
final class Towed {
    private static final String TOW = "tow";
    private static final String RELEASE = "tow release";

    private Towed() {}

    /** Gives the release the height of the tow; leaves out, and returns, every later naming of either. */
    static List<Draft> read(List<Draft> drafts) {
        List<Draft> again = new ArrayList<>(later(drafts, TOW));
        again.addAll(later(drafts, RELEASE));
        drafts.removeAll(again);
        drafts.stream()
                .filter(draft -> draft.means(TOW))
                .findFirst()
                .ifPresent(tow -> drafts.stream()
                        .filter(draft -> draft.means(RELEASE) && !draft.says(Detail.HEIGHT_FT))
                        .forEach(release -> tow.copyTo(release, Set.of(Detail.HEIGHT_FT))));
        return again;
    }

    private static List<Draft> later(List<Draft> drafts, String figure) {
        return drafts.stream().filter(draft -> draft.means(figure)).skip(1).toList();
    }
}
