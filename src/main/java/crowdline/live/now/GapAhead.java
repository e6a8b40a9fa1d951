package crowdline.live.now;

import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import crowdline.live.state.RemarkEntry;
import crowdline.patter.Candidate;
import crowdline.patter.Gap;
import crowdline.patter.PatterRules;
import crowdline.patter.SpokenLength;
import crowdline.show.Act;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The gap between two acts, as far ahead as it is known, and what it can be filled with. */
final class GapAhead {
    /** Nobody plans further ahead than this, seconds: a gap that is longer is planned as it goes. */
    static final double FURTHEST_S = 1800;

    private final Show show;
    private final Function<Remark, Candidate> candidate;
    private final Map<String, Remark> byId;

    /** @param candidate a remark, with how long it takes this speaker */
    GapAhead(Show show, Function<Remark, Candidate> candidate) {
        this.show = show;
        this.candidate = candidate;
        byId = show.remarksById();
    }

    /**
     * The gap at a moment; null while an act is in the air, once the show is over, and so long before its first act that
     * nobody listens.
     *
     * @param nothingElse whether the act is not spoken of yet, so that the show's own facts are told here
     */
    @Nullable
    Gap of(LiveState state, LiveNow now, boolean nothingElse) {
        if (state.course().inTheAir() || state.over() || now.nowS() < Listeners.fromS(show, state, now)) {
            return null;
        }
        String nextId =
                state.course().isWaiting() ? state.actId() : state.nextActId().orElse(null);
        List<Gap.Piece> pieces = new ArrayList<>();
        for (Piece piece : show.gaps().pieces()) {
            boolean isForNext = Objects.equals(piece.beforeAct(), nextId);
            if (piece.beforeAct() == null || isForNext) {
                pieces.add(new Gap.Piece(piece.beforeAct() != null, parts(piece)));
            }
        }
        List<Candidate> loose = nothingElse
                ? show.remarks().stream()
                        .filter(r -> r.kind() != RemarkKind.DUTY && r.kind() != RemarkKind.CALL)
                        .map(candidate)
                        .toList()
                : List.of();
        return new Gap(endS(state, now), show.gaps().talkShare(), lastTalk(state), pieces, loose);
    }

    private List<Candidate> parts(Piece piece) {
        List<Remark> remarks = piece.remarks();
        List<Candidate> parts = new ArrayList<>();
        for (int i = 0; i < remarks.size(); i++) {
            Candidate asked = candidate.apply(remarks.get(i));
            double answerS = piece.parts().get(i).answerS();
            SpokenLength full = asked.full();
            parts.add(new Candidate(
                    asked.remark(),
                    null,
                    new SpokenLength(full.seconds() + answerS, full.lowS() + answerS, full.highS() + answerS),
                    null));
        }
        return parts;
    }

    /** As soon as the call of the next act may begin; where nobody knows when, as far as an open end is planned. */
    private double endS(LiveState state, LiveNow now) {
        PatterRules rules = PatterRules.DEFAULT;
        Double inS = state.phase() instanceof Phase.Waiting ? now.toSlotS() : toNextS(state, now);
        if (inS == null) {
            return now.nowS() + rules.openEndS();
        }
        double toCallS = inS <= 0 ? NextStart.OPEN_S : inS;
        return now.nowS() + Math.min(FURTHEST_S, Math.max(0, toCallS - rules.callStartsAtMostBeforeS()));
    }

    private @Nullable Double toNextS(LiveState state, LiveNow now) {
        Act next = state.nextActId().flatMap(show::act).orElse(null);
        if (next == null) {
            return null;
        }
        LocalDateTime here = LocalDateTime.ofInstant(now.wall(), show.venue().timeZone());
        double inS = Duration.between(here, DayNow.slot(state, show, next)).toMillis() / 1000.0;
        return inS <= 0 ? null : Double.valueOf(inS);
    }

    /** What was said last, with all that was said right before it. */
    private Gap.@Nullable Stretch lastTalk(LiveState state) {
        List<Gap.Stretch> said = state.talk().entries().stream()
                .filter(e -> e.outcome() != RemarkEntry.Outcome.SKIPPED)
                .map(this::stretch)
                .sorted(Comparator.comparingDouble(Gap.Stretch::fromS))
                .toList();
        if (said.isEmpty()) {
            return null;
        }
        double fromS = said.get(0).fromS();
        double toS = said.get(0).toS();
        for (Gap.Stretch next : said) {
            if (next.fromS() - toS > Gap.ONE_STRETCH_S) {
                fromS = next.fromS();
            }
            toS = Math.max(toS, next.toS());
        }
        return new Gap.Stretch(fromS, toS);
    }

    private Gap.Stretch stretch(RemarkEntry entry) {
        return new Gap.Stretch(entry.beganAtS(() -> spokenS(entry)), entry.endedAtS());
    }

    private double spokenS(RemarkEntry entry) {
        Remark remark = byId.get(entry.remarkId());
        RemarkForm form = entry.form();
        SpokenLength length =
                remark == null ? null : candidate.apply(remark).length(form == null ? RemarkForm.FULL : form);
        return length == null ? 0 : length.seconds();
    }
}
