package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import java.util.List;
import java.util.function.BiConsumer;

/** The remarks of a show with where each stands in its file. */
final class EveryRemark {
    private EveryRemark() {}

    /** Tells each with its path: those of the show, of the acts, of their figures, and the parts of pieces. */
    static void in(Show show, BiConsumer<String, Remark> told) {
        all(show.remarks(), "", told);
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            all(act.remarks(), At.act(a) + ".", told);
            for (int f = 0; f < act.figures().size(); f++) {
                all(act.figures().get(f).remarks(), At.figure(a, f) + ".", told);
            }
        }
        List<Piece> pieces = show.gaps().pieces();
        for (int p = 0; p < pieces.size(); p++) {
            List<Remark> parts = pieces.get(p).remarks();
            for (int i = 0; i < parts.size(); i++) {
                told.accept(part(p, i), parts.get(i));
            }
        }
    }

    private static void all(List<Remark> remarks, String path, BiConsumer<String, Remark> told) {
        for (int r = 0; r < remarks.size(); r++) {
            told.accept(path + "remarks[" + r + "]", remarks.get(r));
        }
    }

    static String piece(int piece) {
        return "gaps.pieces[" + piece + "]";
    }

    static String part(int piece, int part) {
        return piece(piece) + ".parts[" + part + "]";
    }
}
