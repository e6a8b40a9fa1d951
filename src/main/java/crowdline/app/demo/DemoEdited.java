package crowdline.app.demo;

import crowdline.app.window.time.LoadedPredictions;
import crowdline.console.pictures.EditedPicture;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.FirstDraft;
import crowdline.edit.day.AskedDuties;
import crowdline.edit.day.GapPieces;
import crowdline.list.ListReader;
import crowdline.loaded.LoadedShow;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.LocatedFinding;
import crowdline.storage.show.KindsFile;
import java.util.List;

/** The demo show with an act more, made of a list. */
final class DemoEdited {
    private static final String LIST =
            "run in from the left, loop at 800 ft, stall turn right end, slow roll, half Cuban, 2 turn spin, low pass";

    private DemoEdited() {}

    static EditedPicture of(LoadedShow loaded, List<LocatedFinding> findings) {
        Catalogue catalogue = loaded.catalogue();
        Show show = loaded.show();
        try {
            Show edited = new AddAct(
                            catalogue, new FirstDraft(catalogue, loaded.paces().own(), 0.5))
                    .fromList(
                            new ListReader(catalogue).read(LIST),
                            new AddAct.Wanted(
                                    KindsFile.shipped().named("aerobatic two-seater"),
                                    null,
                                    "The evening solo",
                                    show.performers().get(0).name(),
                                    AddAct.nextSlot(show)))
                    .of(show)
                    .show();
            edited = asked(edited);
            List<Act> acts = edited.acts();
            return new EditedPicture(
                    edited,
                    LoadedPredictions.view(loaded.with(edited), findings),
                    acts.get(acts.size() - 1).id());
        } catch (CannotBe e) {
            throw new IllegalStateException("the list of the picture makes no act: " + e.why(), e);
        }
    }

    /** With two duties as an organiser asks for them, and an interview for a gap. */
    private static Show asked(Show show) throws CannotBe {
        Show with = AskedDuties.add(DemoMoments.SPONSOR).of(show).show();
        String id = with.remarks().get(with.remarks().size() - 1).id();
        with = AskedDuties.times(id, "4").of(with).show();
        with = AskedDuties.by(id, "15:30").of(with).show();
        with = AskedDuties.add(DemoMoments.GATE).of(with).show();
        with = GapPieces.add("Interview with the tow pilot").of(with).show();
        return GapPieces.parts(
                        with.gaps().pieces().get(0).id(),
                        "How high do you take her? [25 s]\n\nAnd what does she say when she lets go? [20 s]\n\nThank you.")
                .of(with)
                .show();
    }
}
