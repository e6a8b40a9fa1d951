package crowdline.show.check;

import crowdline.show.Show;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Remark;
import crowdline.show.figure.Translation;
import java.util.function.Consumer;

/** What is said in another language says what the remark says now, in the form in which it is said. */
final class LanguageRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        EveryRemark.in(show, (path, remark) -> check(remark, path + ".otherLanguage", findings));
    }

    private static void check(Remark remark, String path, Consumer<Finding> findings) {
        Translation other = remark.translation();
        if (other == null) {
            return;
        }
        String of = "the " + other.languageName() + " of the remark " + Written.quoted(remark.id());
        if (other.older()) {
            findings.accept(new Finding(
                    Severity.WARNING,
                    "translation-older",
                    of + " is " + Translation.OLDER + "; translate it again, or accept it in Words with Ctrl+Enter"
                            + " if it"
                            + " still fits",
                    path + ".older"));
        }
        if (remark.shortText() != null && other.shortText() == null) {
            findings.accept(new Finding(
                    Severity.NOTE,
                    "translation-not-short",
                    of + " has no short form, so all of it is said where the remark is said in its own; shorten it, or"
                            + " leave it where there is time",
                    path));
        }
    }
}
