package crowdline.live.state;

import crowdline.live.event.TalkEvent;
import crowdline.live.state.RemarkEntry.Outcome;
import crowdline.patter.Speaking;
import crowdline.show.figure.RemarkForm;

/** How remarks are begun, said and skipped. */
final class TalkSteps {
    private TalkSteps() {}

    static Step next(LiveState state, TalkEvent event) {
        if (event instanceof TalkEvent.RemarkStarted started) {
            return begun(state, started, started.form(), false);
        }
        if (event instanceof TalkEvent.FillerTaken taken) {
            return begun(state, taken, taken.form(), true);
        }
        if (event instanceof TalkEvent.RemarkSaid said) {
            return said(state, said);
        }
        if (event instanceof TalkEvent.RemarkLeft left) {
            return left(state, left);
        }
        if (event instanceof TalkEvent.RemarkShown shown) {
            return shown(state, shown);
        }
        return skipped(state, event);
    }

    /** No hand did it, so no hand need take it back; nor does anybody want to hear that a key came before it. */
    private static Step shown(LiveState state, TalkEvent.RemarkShown event) {
        boolean settled = state.talk().speaking(event.remarkId()) != null
                || state.talk().entries().stream()
                        .anyMatch(e ->
                                e.remarkId().equals(event.remarkId()) && e.settles() && e.endedAtS() >= event.sinceS());
        if (settled) {
            return new Step.Moved(state);
        }
        RemarkEntry entry = new RemarkEntry(
                event.remarkId(),
                event.form(),
                Outcome.SHOWN,
                false,
                Math.min(event.sinceS(), event.atS()),
                event.atS(),
                state.actId(),
                state.figureId());
        return new Step.Moved(state.withTalk(state.talk().with(state.talk().speaking(), entry)));
    }

    private static Step begun(LiveState state, TalkEvent event, RemarkForm form, boolean filler) {
        if (state.talk().speaking(event.remarkId()) != null) {
            return new Step.Refused("This remark is already being said.");
        }
        Talk talk = state.talk()
                .cutShort(event.atS(), state.actId(), state.figureId())
                .with(new Speaking(event.remarkId(), form, event.atS(), filler), null);
        return moved(state, talk, event);
    }

    private static Step said(LiveState state, TalkEvent.RemarkSaid event) {
        Speaking mine = state.talk().speaking(event.remarkId());
        if (mine == null && state.talkHere().justSaid(event.remarkId(), event.atS())) {
            return new Step.Refused("This remark is already marked as said.");
        }
        RemarkEntry entry = new RemarkEntry(
                event.remarkId(),
                event.form(),
                Outcome.SAID,
                mine != null && mine.filler(),
                mine == null ? null : mine.startedAtS(),
                mine == null ? event.atS() : Math.max(event.atS(), mine.startedAtS()),
                state.actId(),
                state.figureId());
        return moved(state, state.talk().with(mine == null ? state.talk().speaking() : null, entry), event);
    }

    private static Step skipped(LiveState state, TalkEvent event) {
        if (state.talkHere().justSaid(event.remarkId(), event.atS())) {
            return new Step.Refused("This remark is already marked as said.");
        }
        if (state.talkHere().skipped(event.remarkId())) {
            return new Step.Refused("This remark is already left out.");
        }
        Talk talk = state.talk().speaking(event.remarkId()) == null
                ? state.talk()
                : state.talk().cutShort(event.atS(), state.actId(), state.figureId());
        RemarkEntry entry = new RemarkEntry(
                event.remarkId(), null, Outcome.SKIPPED, false, null, event.atS(), state.actId(), state.figureId());
        return moved(state, talk.with(talk.speaking(), entry), event);
    }

    /** No hand did it, so no hand need take it back. */
    private static Step left(LiveState state, TalkEvent.RemarkLeft event) {
        Speaking mine = state.talk().speaking(event.remarkId());
        return mine == null
                ? new Step.Refused("This remark is not being said.")
                : new Step.Moved(state.withTalk(state.talk()
                        .ended(
                                mine,
                                event.cutShort() ? Outcome.CUT_SHORT : Outcome.SHOWN,
                                event.atS(),
                                state.actId(),
                                state.figureId())));
    }

    private static Step moved(LiveState state, Talk talk, TalkEvent event) {
        return new Step.Moved(state.withTalk(talk).plusTakeBack(new TakeBack(event, null, state.talk())));
    }
}
