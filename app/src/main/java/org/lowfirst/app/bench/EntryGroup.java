package org.lowfirst.app.bench;

import java.util.Locale;
import org.lowfirst.station.CareFact;
import org.lowfirst.station.CrewFact;
import org.lowfirst.station.Fact;
import org.lowfirst.station.GateFact;
import org.lowfirst.station.MoneyFact;
import org.lowfirst.station.SessionFact;
import org.lowfirst.station.StandFact;

/** What entries are about, as people look for them. */
public enum EntryGroup {
    FILLS,
    READINGS,
    BANK,
    BOTTLES,
    FITNESS,
    PEOPLE,
    CHARGES,
    CARE,
    SETTINGS,
    CORRECTIONS;

    /** Its name in addresses and in the words file. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static EntryGroup of(Fact fact) {
        if (fact instanceof Fact.EntryCorrected) {
            return CORRECTIONS;
        } else if (fact instanceof Fact.ReadingTaken) {
            return READINGS;
        } else if (fact instanceof Fact.BottleRegistered
                || fact instanceof Fact.BottleAmended
                || fact instanceof Fact.BottleRetired) {
            return BOTTLES;
        } else if (fact instanceof Fact.SupplyConnected
                || fact instanceof Fact.SupplyAmended
                || fact instanceof Fact.SupplyRemoved
                || fact instanceof Fact.TwoOpenedTogether
                || fact instanceof StandFact) {
            return BANK;
        } else if (fact instanceof GateFact) {
            return FITNESS;
        } else if (fact instanceof CrewFact) {
            return PEOPLE;
        } else if (fact instanceof MoneyFact) {
            return CHARGES;
        } else if (fact instanceof CareFact) {
            return CARE;
        }
        return ofFill(fact) || fact instanceof SessionFact ? FILLS : SETTINGS;
    }

    private static boolean ofFill(Fact fact) {
        return fact instanceof Fact.FillStarted
                || fact instanceof Fact.StageRecorded
                || fact instanceof Fact.FillFinished
                || fact instanceof Fact.FillAbandoned
                || fact instanceof Fact.FillRecorded;
    }
}
