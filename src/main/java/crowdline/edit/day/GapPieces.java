package crowdline.edit.day;

import crowdline.arrange.FreshId;
import crowdline.edit.Change;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.show.Gaps;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.bounds.Written;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Edits of what the gaps between acts are filled with. */
public final class GapPieces {
    private GapPieces() {}

    /** Adds a piece, with words still to be written. */
    public static Edit add(String title) {
        return ((Edit) show -> {
                    Set<String> ids =
                            show.gaps().pieces().stream().map(Piece::id).collect(Collectors.toCollection(HashSet::new));
                    List<Piece> all = new ArrayList<>(show.gaps().pieces());
                    all.add(new Piece(
                            FreshId.of("piece", ids), title.strip(), null, List.of(new Piece.Part("What to say.", 0))));
                    return Change.of("Add a piece", with(show, all));
                })
                .refusing();
    }

    /** Takes a piece out, with its words. */
    public static Edit remove(String id) {
        return show -> {
            Piece gone = find(show, id);
            return Change.of(
                    "Remove the piece " + quoted(gone),
                    with(
                            show,
                            show.gaps().pieces().stream()
                                    .filter(p -> !p.id().equals(id))
                                    .toList()));
        };
    }

    /** Calls a piece otherwise. */
    public static Edit rename(String id, String title) {
        return edit(
                id,
                "Rename the piece ",
                (show, p) -> new Piece(id, title.strip(), p.beforeAct(), p.speaker(), p.parts()));
    }

    /** Which act it leads up to, or none if it is null. */
    public static Edit before(String id, @Nullable String actId) {
        return edit(id, "Gap for the piece ", (show, p) -> new Piece(id, p.title(), actId, p.speaker(), p.parts()));
    }

    /** Who says it where a part names nobody else; whoever is at the console if it is null. */
    public static Edit saidBy(String id, @Nullable String speaker) {
        return edit(
                id, "Who says the piece ", (show, p) -> new Piece(id, p.title(), p.beforeAct(), speaker, p.parts()));
    }

    /** Its parts, as they are typed. */
    public static Edit parts(String id, String typed) {
        return edit(
                id,
                "Words of the piece ",
                (show, p) -> new Piece(id, p.title(), p.beforeAct(), p.speaker(), PieceScript.parts(typed, show, p)));
    }

    /**
     * The parts as they are typed, with an empty line between them: a name and a colon before who says one, how long an
     * answer takes in square brackets after a question, and another language on a line that begins with its code in such.
     */
    public static String typed(Piece piece) {
        return PieceScript.typed(piece);
    }

    /** How much of a gap is talk at most, in per cent. */
    public static Edit talk(String typed) throws CannotBe {
        String plain = typed.replace("%", "").strip().replace(',', '.');
        if (!plain.matches("[0-9]{1,3}(\\.[0-9])?")) {
            throw new CannotBe(
                    "Talk in gaps is " + Written.quoted(typed.strip()) + "; it must be a percentage, such as 50");
        }
        double percent = Double.parseDouble(plain);
        return ((Edit) show -> Change.of(
                        "Talk in gaps",
                        show.withGaps(new Gaps(percent, show.gaps().pieces()))))
                .refusing();
    }

    private static Show with(Show show, List<Piece> pieces) {
        return show.withGaps(new Gaps(show.gaps().talkPercent(), pieces));
    }

    private static Edit edit(String id, String name, BiFunction<Show, Piece, Piece> changing) {
        return ((Edit) show -> {
                    Piece before = find(show, id);
                    Piece after = changing.apply(show, before);
                    return Change.of(
                            name + quoted(before),
                            with(
                                    show,
                                    show.gaps().pieces().stream()
                                            .map(p -> p.id().equals(id) ? after : p)
                                            .toList()));
                })
                .refusing();
    }

    private static Piece find(Show show, String id) throws CannotBe {
        return show.gaps().pieces().stream()
                .filter(p -> p.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new CannotBe("That piece is no longer in the show; choose another"));
    }

    private static String quoted(Piece piece) {
        return "“" + Written.brief(piece.title(), 40) + "”";
    }
}
