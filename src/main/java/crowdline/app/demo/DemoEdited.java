package crowdline.app.demo;

import crowdline.app.window.time.LoadedPredictions;
import crowdline.console.pictures.EditedPicture;
import crowdline.edit.act.AddAct;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.FirstDraft;
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
            Show edited = new AddAct(catalogue, new FirstDraft(catalogue, loaded.pace(), 0.5))
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
            List<Act> acts = edited.acts();
            return new EditedPicture(
                    edited,
                    LoadedPredictions.view(loaded.with(edited), findings),
                    acts.get(acts.size() - 1).id());
        } catch (CannotBe e) {
            throw new IllegalStateException("the list of the picture makes no act: " + e.why(), e);
        }
    }
}
