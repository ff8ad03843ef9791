package org.lowfirst.app.bench;

import java.util.Map;
import java.util.NoSuchElementException;
import org.lowfirst.station.SupplyId;

/**
 * How much gas is in each supply of the bank, by the latest readings and by what was drawn since. A cache: worked out from the
 * journal, never written to it.
 */
record BankBook(Map<SupplyId, SupplyAccount> accounts) {

    BankBook {
        accounts = Map.copyOf(accounts);
    }

    SupplyAccount getAccount(SupplyId supply) {
        SupplyAccount account = accounts.get(supply);
        if (account == null) {
            throw new NoSuchElementException("The book has no supply " + supply + ".");
        }
        return account;
    }
}
