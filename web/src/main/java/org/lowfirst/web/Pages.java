package org.lowfirst.web;

import org.lowfirst.web.ahead.ForecastPages;
import org.lowfirst.web.ahead.SendBackPages;
import org.lowfirst.web.arrangement.ArrangementPages;
import org.lowfirst.web.bank.BankPages;
import org.lowfirst.web.bank.ReadingsPages;
import org.lowfirst.web.bank.SupplyPages;
import org.lowfirst.web.bottles.BottlePages;
import org.lowfirst.web.bottles.BottlesPages;
import org.lowfirst.web.bottles.ManyBottlesPages;
import org.lowfirst.web.camp.CampPages;
import org.lowfirst.web.data.DataPages;
import org.lowfirst.web.data.Uploads;
import org.lowfirst.web.due.DuePages;
import org.lowfirst.web.due.EquipmentPages;
import org.lowfirst.web.echo.EchoPages;
import org.lowfirst.web.exchange.ExchangePages;
import org.lowfirst.web.exchange.ExchangeStepPages;
import org.lowfirst.web.fill.ChoosePages;
import org.lowfirst.web.fill.DonePages;
import org.lowfirst.web.fill.PlanPages;
import org.lowfirst.web.fill.StepPages;
import org.lowfirst.web.firstday.FirstDayPages;
import org.lowfirst.web.flight.FlightPages;
import org.lowfirst.web.gate.LookPages;
import org.lowfirst.web.gauges.GaugesPages;
import org.lowfirst.web.hub.HubPages;
import org.lowfirst.web.journal.EntryPages;
import org.lowfirst.web.journal.JournalPages;
import org.lowfirst.web.kept.KeptPages;
import org.lowfirst.web.leaks.LeakCheckPages;
import org.lowfirst.web.money.ClosePages;
import org.lowfirst.web.money.CostsPages;
import org.lowfirst.web.money.PayerPages;
import org.lowfirst.web.money.PricesPages;
import org.lowfirst.web.money.RentPages;
import org.lowfirst.web.money.StatementsPages;
import org.lowfirst.web.papers.PaperPages;
import org.lowfirst.web.papers.PapersPages;
import org.lowfirst.web.past.PastFillPages;
import org.lowfirst.web.people.PeoplePages;
import org.lowfirst.web.ready.GroupsPages;
import org.lowfirst.web.ready.PlacePages;
import org.lowfirst.web.ready.ReadyPages;
import org.lowfirst.web.ready.RefillPages;
import org.lowfirst.web.ready.ShiftReadingPages;
import org.lowfirst.web.rules.RulesPages;
import org.lowfirst.web.server.HealthPage;
import org.lowfirst.web.server.PageRouting;
import org.lowfirst.web.server.SecurityRules;
import org.lowfirst.web.server.TroubleAdvice;
import org.lowfirst.web.session.BeginPages;
import org.lowfirst.web.session.GuidedPages;
import org.lowfirst.web.session.SessionPages;
import org.lowfirst.web.settings.SettingsPages;
import org.lowfirst.web.stamp.StampEcho;
import org.lowfirst.web.stamp.StampPages;
import org.lowfirst.web.stand.StandPages;
import org.lowfirst.web.start.StartPages;
import org.lowfirst.web.study.StudyPages;
import org.lowfirst.web.temperatures.TemperaturesPages;
import org.lowfirst.web.twoopen.TwoOpenPages;
import org.lowfirst.web.warm.SettlePages;
import org.lowfirst.web.warm.TimePages;
import org.lowfirst.web.warm.WarmStopsPages;
import org.springframework.boot.SpringBootConfiguration;
import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.autoconfigure.context.ConfigurationPropertiesAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration;
import org.springframework.boot.tomcat.autoconfigure.servlet.TomcatServletWebServerAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.DispatcherServletAutoConfiguration;
import org.springframework.context.annotation.Import;

/** Everything that is wired together, by name: nothing is found by scanning, which keeps the start short. */
@SpringBootConfiguration(proxyBeanMethods = false)
@ImportAutoConfiguration({
    ConfigurationPropertiesAutoConfiguration.class,
    TomcatServletWebServerAutoConfiguration.class,
    DispatcherServletAutoConfiguration.class,
    SecurityFilterAutoConfiguration.class
})
@Import({
    PageRouting.class,
    SecurityRules.class,
    TroubleAdvice.class,
    StartPages.class,
    HubPages.class,
    SettingsPages.class,
    PeoplePages.class,
    ReadyPages.class,
    ShiftReadingPages.class,
    RefillPages.class,
    GroupsPages.class,
    PlacePages.class,
    DuePages.class,
    EquipmentPages.class,
    BankPages.class,
    ReadingsPages.class,
    SupplyPages.class,
    StandPages.class,
    ExchangePages.class,
    ExchangeStepPages.class,
    ArrangementPages.class,
    TwoOpenPages.class,
    PastFillPages.class,
    BottlesPages.class,
    BottlePages.class,
    ChoosePages.class,
    PlanPages.class,
    LookPages.class,
    StampPages.class,
    StampEcho.class,
    RulesPages.class,
    TimePages.class,
    GaugesPages.class,
    SettlePages.class,
    WarmStopsPages.class,
    TemperaturesPages.class,
    LeakCheckPages.class,
    StepPages.class,
    DonePages.class,
    PricesPages.class,
    StatementsPages.class,
    ClosePages.class,
    CostsPages.class,
    RentPages.class,
    PayerPages.class,
    JournalPages.class,
    EntryPages.class,
    ManyBottlesPages.class,
    Uploads.class,
    DataPages.class,
    FirstDayPages.class,
    PapersPages.class,
    PaperPages.class,
    EchoPages.class,
    SessionPages.class,
    BeginPages.class,
    GuidedPages.class,
    ForecastPages.class,
    SendBackPages.class,
    StudyPages.class,
    FlightPages.class,
    CampPages.class,
    KeptPages.class,
    HealthPage.class
})
class Pages {}
