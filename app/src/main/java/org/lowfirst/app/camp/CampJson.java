package org.lowfirst.app.camp;

import org.lowfirst.app.sheet.JsonLine;
import org.lowfirst.planning.ahead.Band;
import org.lowfirst.planning.camp.CampOption;

/** A camp as one JSON object on one line, see docs/schema/camp-result.schema.json. */
public final class CampJson {

    private final CampDone camp;
    private final JsonLine json = new JsonLine();

    private CampJson(CampDone camp) {
        this.camp = camp;
    }

    /** The object, with a new line at its end. */
    public static String of(CampDone camp) {
        return new CampJson(camp).text();
    }

    private String text() {
        json.openObject();
        json.key("found").value(camp.found());
        json.key("supplies");
        if (camp.plan().supplies().isPresent()) {
            json.value(camp.plan().supplies().getAsInt());
        } else {
            json.nothing();
        }
        json.key("days").value(camp.plan().days());
        json.key("chance_wanted").value(camp.plan().chanceWanted());
        band("fills_wanted", camp.plan().fillsWanted());
        json.key("options").openList();
        camp.plan().options().forEach(this::option);
        json.closeList();
        json.key("notes").openList();
        camp.notes().forEach(json::value);
        json.closeList();
        return json.closeObject() + "\n";
    }

    private void option(CampOption option) {
        json.openObject();
        json.key("supplies").value(option.supplies());
        json.key("gas_mol").value(option.gas().moles());
        json.key("gas_litres")
                .value(camp.request()
                        .conditions()
                        .gas()
                        .freeVolume(option.gas(), camp.standard())
                        .toLitres());
        band("fills_made", option.fillsMade());
        band("days_covered", option.daysCovered());
        json.key("chance_all").value(option.chanceAll());
        json.closeObject();
    }

    private void band(String key, Band band) {
        json.key(key).openObject();
        json.key("low90").value(band.low90());
        json.key("low50").value(band.low50());
        json.key("middle").value(band.middle());
        json.key("high50").value(band.high50());
        json.key("high90").value(band.high90());
        json.closeObject();
    }
}
