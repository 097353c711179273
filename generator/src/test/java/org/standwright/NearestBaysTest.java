package org.standwright;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Stands that cannot be built for what is in their bays: each message names a value that then builds. */
class NearestBaysTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/bays/0/width":"700 mm"} | /plan/width | Make the plan (.+?) wide | /plan/width
        plain | {"/bays/0/width":"600 mm"} | /plan/width | Make the plan (.+?) wide | /plan/width
        plain | {"/bays/1/width":"300 mm"} | /plan/width | Make the plan (.+?) wide | /plan/width
        plain | {"/bays/0/width":"100 mm","/bays/1/width":"566.9 mm"} | /bays/0/width | Make it (.+?) wide and the plan (.+?) wide | /bays/0/width /plan/width
        plain | {"/bays/1/contents":[{"kind":"divided","bays":[{"width":"100 mm","contents":[{"kind":"equal-drawers","count":2}]},{"contents":[{"kind":"open"}]}]}]} | /bays/1/contents/0/bays/0/width | Make it (.+?) wide | /bays/1/contents/0/bays/0/width
        plain | {"/bays/0/contents":[{"kind":"divided","bays":[{"width":"380 mm","contents":[{"kind":"equal-drawers","count":2}]},{"contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/0/width | Make it (.+?) wide | /bays/0/contents/0/bays/0/width
        plain | {"/bays/0/contents":[{"kind":"divided","bays":[{"width":"180 mm","contents":[{"kind":"open"}]},{"width":"180 mm","contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/1/width | Make it (.+?) wide | /bays/0/contents/0/bays/1/width
        plain | {"/layout":"mirrored","/bays/0/contents":[{"kind":"divided","bays":[{"width":"380 mm","contents":[{"kind":"equal-drawers","count":2}]},{"contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/0/width | Make it (.+?) wide | /bays/0/contents/0/bays/0/width
        plain | {"/plan/width":"160 mm"} | /plan/width | Make the plan (\\S+ mm) wide | /plan/width
        plain | {"/plan/width":"160 mm","/bays":[{"contents":[{"kind":"open"}]}]} | /plan/width | Make the plan (\\S+ mm) wide | /plan/width
        plain | {"/bays/0/width":"105 mm"} | /bays/0/width | Make it (.+?) wide | /bays/0/width
        plain | {"/bays/1/width":"200 mm"} | /bays/1/width | Make bay 2 (.+?) wide | /bays/1/width
        plain | {"/bays/0/contents":[{"kind":"divided","bays":[{"width":"100 mm","contents":[{"kind":"equal-drawers","count":2}]},{"width":"180 mm","contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/0/width | Make it (.+?) wide | /bays/0/contents/0/bays/0/width
        plain | {"/bays/0/contents":[{"kind":"divided","bays":[{"width":"250 mm","contents":[{"kind":"equal-drawers","count":2}]},{"width":"380 mm","contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/1/width | Make it (.+?) wide | /bays/0/contents/0/bays/1/width
        plain | {"/bays/1/contents":[{"kind":"divided","bays":[{"contents":[{"kind":"equal-drawers","count":2}]},{"contents":[{"kind":"equal-drawers","count":2}]},{"contents":[{"kind":"equal-drawers","count":2}]}]}]} | /plan/width | Make the plan (.+?) wide | /plan/width
        plain | {"/place/margins":{"left":"-120 mm","right":"-120 mm"},"/plan/width":"160 mm"} | /plan/width | the plan (\\S+ mm) wide and the right margin (\\S+ mm) | /plan/width /place/margins/right
        drill | {"/drawers/grip":{"kind":"pull","pull":"pull-96"},"/bays/0/width":"25 in"} | /plan/width | Make the plan (.+? in) wide | /plan/width
        drill | {"/drawers/grip":{"kind":"pull","pull":"pull-96"},"/bays/0/width":"20 in"} | /plan/width | Make the plan (.+? in) wide | /plan/width
        """)
    void namesAWidthOfABayOrOfThePlan(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/bays/0/contents":[{"kind":"drawers","fronts":["300 mm","100 mm"]}]} | /bays/0/contents | lowest front (.+?) high | /bays/0/contents/0/fronts/1
        plain | {"/bays":[{"contents":[{"kind":"drawers","fronts":["300 mm","100 mm"]}]}]} | /bays/0/contents | working height (.+?)\\. | /workingHeight
        plain | {"/bays/0/contents":[{"kind":"drawers","fronts":["50 mm"]},{"kind":"equal-drawers","count":2}]} | /bays/0/contents | this front (.+?) high | /bays/0/contents/0/fronts/0
        plain | {"/bays/0/contents":[{"kind":"drawers","fronts":["100 mm","50 mm"]},{"kind":"equal-drawers","count":2}]} | /bays/0/contents | this front (.+?) high | /bays/0/contents/0/fronts/1
        plain | {"/bays/0/contents":[{"kind":"equal-drawers","count":3,"most":"60 mm"}]} | /bays/0/contents/0/most | Allow them (.+?)\\. | /bays/0/contents/0/most
        plain | {"/bays/0/contents":[{"kind":"equal-drawers","count":3,"least":"150 mm","most":"100 mm"},{"kind":"open"}]} | /bays/0/contents/0/most | Allow them (.+?)\\. | /bays/0/contents/0/most
        plain | {"/bays/0/contents":[{"kind":"equal-drawers","count":3,"least":"200 mm"}]} | /workingHeight | nearest possible working height is (.+?)\\. | /workingHeight
        plain | {"/bays":[{"contents":[{"kind":"equal-drawers","count":3,"most":"100 mm"}]}]} | /bays/0/contents/0/most | working height (.+?)\\. | /workingHeight
        plain | {"/bays/0/contents":[{"kind":"graduated-drawers","count":3,"ratio":1.5,"most":"60 mm"}]} | /bays/0/contents/0/most | Allow them (.+?)\\. | /bays/0/contents/0/most
        plain | {"/bays/0/contents":[{"kind":"graduated-drawers","count":6,"ratio":1.5}]} | /workingHeight | nearest possible working height is (.+?)\\. | /workingHeight
        plain | {"/bays/0/contents":[{"kind":"open","height":"200 mm"},{"kind":"open","height":"100 mm"}]} | /bays/0/contents | lowest opening (.+?) high | /bays/0/contents/1/height
        plain | {"/bays/0/contents":[{"kind":"open","height":"100 mm","shelves":{"kind":"fixed","count":2}},{"kind":"open"}]} | /bays/0/contents/0/height | Make it (.+?) high | /bays/0/contents/0/height
        plain | {"/bays/0/contents":[{"kind":"open","height":"200 mm","shelves":{"kind":"adjustable","count":2}},{"kind":"open"}]} | /bays/0/contents/0/height | Make it (.+?) high | /bays/0/contents/0/height
        plain | {"/bays/0/contents":[{"kind":"open","shelves":{"kind":"fixed","count":10}}]} | /workingHeight | nearest possible working height is (.+?)\\. | /workingHeight
        plain | {"/bays/0/contents":[{"kind":"clear","use":"hose","height":"200 mm"},{"kind":"clear","use":"hose","height":"100 mm"}]} | /bays/0/contents | lowest opening (.+?) high | /bays/0/contents/1/height
        plain | {"/bays/0/contents":[{"kind":"divided","height":"60 mm","bays":[{"contents":[{"kind":"equal-drawers","count":2}]},{"contents":[{"kind":"open"}]}]},{"kind":"open"}]} | /bays/0/contents/0/height | Make it (.+?) high | /bays/0/contents/0/height
        plain | {"/bays/0/contents":[{"kind":"open"},{"kind":"divided","height":"360 mm","bays":[{"contents":[{"kind":"drawers","fronts":["100 mm","100 mm"]}]},{"contents":[{"kind":"open"}]}]}]} | /bays/0/contents/1/bays/0/contents | lowest front (.+?) high | /bays/0/contents/1/bays/0/contents/0/fronts/1
        plain | {"/bays/0/contents":[{"kind":"divided","bays":[{"contents":[{"kind":"drawers","fronts":["100 mm","100 mm"]}]},{"contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/0/contents | lowest front (.+?) high | /bays/0/contents/0/bays/0/contents/0/fronts/1
        plain | {"/bays/0/contents":[{"kind":"divided","height":"200 mm","bays":[{"contents":[{"kind":"open"}]},{"contents":[{"kind":"open"}]}]},{"kind":"drawers","fronts":["100 mm"]}]} | /bays/0/contents | lowest front (.+?) high | /bays/0/contents/1/fronts/0
        plain | {"/bays/0/contents":[{"kind":"drawers","fronts":["100 mm"]},{"kind":"divided","height":"200 mm","bays":[{"contents":[{"kind":"open"}]},{"contents":[{"kind":"open"}]}]}]} | /bays/0/contents | lowest .*? (.+?) high | /bays/0/contents/1/height
        plain | {"/bays/0/contents":[{"kind":"divided","bays":[{"contents":[{"kind":"drawers","fronts":["100 mm","50 mm"]},{"kind":"open"}]},{"contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/0/contents | this front (.+?) high | /bays/0/contents/0/bays/0/contents/0/fronts/1
        plain | {"/bays/0/contents":[{"kind":"divided","bays":[{"contents":[{"kind":"equal-drawers","count":2,"most":"60 mm"},{"kind":"open"}]},{"contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/0/contents/0/most | Allow them (.+?)\\. | /bays/0/contents/0/bays/0/contents/0/most
        plain | {"/bays/0/contents":[{"kind":"filled-drawers","front":"60 mm"}]} | /bays/0/contents | this front (.+?) high | /bays/0/contents/0/front
        plain | {"/bays/0/contents":[{"kind":"graduated-drawers","count":3,"ratio":1.5,"most":"60 mm"},{"kind":"open"}]} | /bays/0/contents/0/most | Allow them (.+?)\\. | /bays/0/contents/0/most
        plain | {"/bays/0/contents":[{"kind":"equal-drawers","count":3,"most":"60 mm"},{"kind":"open"}]} | /bays/0/contents/0/most | Allow them (.+?)\\. | /bays/0/contents/0/most
        plain | {"/bays/0/contents":[{"kind":"equal-drawers","count":3,"most":"100 mm"}]} | /bays/0/contents/0/most | Allow those fronts (.+?)\\. | /bays/0/contents/0/most
        plain | {"/bays/0/contents":[{"kind":"graduated-drawers","count":3,"ratio":1.5,"most":"180 mm"}]} | /bays/0/contents/0/most | Allow those fronts (.+?)\\. | /bays/0/contents/0/most
        plain | {"/bays/0/contents":[{"kind":"drawers","fronts":["80 mm"]},{"kind":"equal-drawers","count":2,"most":"100 mm"},{"kind":"equal-drawers","count":2,"most":"110 mm"}]} | /bays/0/contents/1/most | Allow those fronts (.+?)\\. | /bays/0/contents/1/most
        plain | {"/layout":"mirrored","/bays/0/contents":[{"kind":"equal-drawers","count":3,"most":"100 mm"}]} | /bays/0/contents/0/most | Allow those fronts (.+?)\\. | /bays/0/contents/0/most
        """)
    void namesAHeightThatFillsTheBay(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/bays/0/contents":[{"kind":"door","hinge":"hinge-35-inset","hung":"left"}],"/drawers/mount":"inset","/drawers/front":{"preset":"birch-12"},"/drawers/box":"birch-12"} | /drawers/front | sheet of (.+?) or more | /drawers/front/thickness
        plain | {"/bays/0/contents":[{"kind":"door","hinge":{"preset":"hinge-35-overlay","style":"concealed","cupFromEdge":"19 mm"},"hung":"left"}]} | /bays/0/contents/0/hinge | centre (.+?) from | /bays/0/contents/0/hinge/cupFromEdge
        plain | {"/bays/0/contents":[{"kind":"door","hinge":{"preset":"hinge-35-overlay","style":"concealed"},"hung":"right"}]} | /bays/0/contents/0/hinge | overlay of (\\S+ mm)\\. Or | /bays/0/contents/0/hinge/overlay
        plain | {"/bays/1/contents":[{"kind":"divided","bays":[{"contents":[{"kind":"door","hinge":{"preset":"hinge-35-overlay","style":"concealed"},"hung":"left"}]},{"contents":[{"kind":"open"}]}]}]} | /bays/1/contents/0/bays/0/contents/0/hinge | overlay of (\\S+ mm)\\. Or | /bays/1/contents/0/bays/0/contents/0/hinge/overlay
        plain | {"/bays/0/contents":[{"kind":"door","hinge":"hinge-butt-50","hung":"left"}]} | /bays/0/contents/0/hinge | fronts "(.+?)" | /drawers/mount
        plain | {"/drawers/mount":"inset","/bays/0/contents":[{"kind":"door","hinge":{"preset":"hinge-butt-50","style":"butt","leaf":"22 mm"},"hung":"left"}]} | /bays/0/contents/0/hinge | leaf is (.+?) wide or | /bays/0/contents/0/hinge/leaf
        plain | {"/bays/1/contents":[{"kind":"divided","bays":[{"contents":[{"kind":"door","hinge":{"preset":"hinge-35-half-overlay","style":"concealed","cupFromEdge":"19 mm"},"hung":"left"}]},{"contents":[{"kind":"open"}]}]}]} | /bays/1/contents/0/bays/0/contents/0/hinge | centre (.+?) from | /bays/1/contents/0/bays/0/contents/0/hinge/cupFromEdge
        plain | {"/bays/0/contents":[{"kind":"door","height":"140 mm","hinge":"hinge-35-overlay","hung":"left"},{"kind":"open"}]} | /bays/0/contents/0/height | Make it (.+?) high | /bays/0/contents/0/height
        plain | {"/bays/0/contents":[{"kind":"door","height":"240 mm","hinge":"hinge-35-overlay","hung":"left","shelves":{"kind":"fixed","count":2}},{"kind":"open"}]} | /bays/0/contents/0/height | Make it (.+?) high | /bays/0/contents/0/height
        plain | {"/bays/0/contents":[{"kind":"door","height":"240 mm","hinge":"hinge-35-overlay","hung":"left","shelves":{"kind":"adjustable","count":2}},{"kind":"open"}]} | /bays/0/contents/0/height | Make it (.+?) high | /bays/0/contents/0/height
        plain | {"/bays/0/contents":[{"kind":"open"},{"kind":"door","height":"240 mm","hinge":"hinge-35-overlay","hung":"left"},{"kind":"door","height":"300 mm","hinge":"hinge-35-overlay","hung":"left"}]} | /workingHeight | height is (.+?)\\. | /workingHeight
        plain | {"/bays/0/contents":[{"kind":"door","height":"240 mm","hinge":"hinge-35-overlay","hung":"left"},{"kind":"door","height":"200 mm","hinge":"hinge-35-overlay","hung":"left"}]} | /bays/0/contents | lowest door (.+?) high | /bays/0/contents/1/height
        plain | {"/drawers/mount":"inset","/bays/0/width":"200 mm","/bays/0/contents":[{"kind":"door","hinge":"hinge-35-inset","hung":"pair"}]} | /bays/0/width | Make it (.+?) wide | /bays/0/width
        plain | {"/bays/0/contents":[{"kind":"door","hinge":{"preset":"hinge-35-overlay","style":"concealed","height":"150 mm"},"hung":"left"},{"kind":"open","height":"280 mm"}]} | /workingHeight | height is (.+?)\\. | /workingHeight
        plain | {"/drawers/mount":"inset","/plan/width":"300 mm","/bays/0/width":null,"/place/margins":{"left":"30 mm"},"/bays/1/contents":[{"kind":"door","hinge":"hinge-35-inset","hung":"pair"}]} | /plan/width | Make the plan (.+?) wide | /plan/width
        plain | {"/drawers/mount":"inset","/plan":{"depth":"560 mm"},"/bays/0/width":null,"/place/margins":{"left":"-30 mm","right":"-30 mm"},"/bays/1/contents":[{"kind":"door","hinge":"hinge-35-inset","hung":"pair"}]} | /place/margins | the right margin (\\S+ mm) | /place/margins/right
        plain | {"/drawers/mount":"inset","/drawers/gap":"1 mm","/bays/0/width":"124 mm","/bays/0/contents":[{"kind":"door","hinge":{"preset":"hinge-butt-50","style":"butt"},"hung":"left"}]} | /bays/0/width | Make it (.+?) wide | /bays/0/width
        plain | {"/drawers/mount":"inset","/drawers/gap":"1 mm","/bays/0/width":"244 mm","/bays/0/contents":[{"kind":"door","hinge":"hinge-butt-50","hung":"pair"}]} | /bays/0/width | Make it (.+?) wide | /bays/0/width
        plain | {"/drawers/mount":"inset","/drawers/gap":"1 mm","/bays/0/contents":[{"kind":"divided","bays":[{"width":"130 mm","contents":[{"kind":"door","hinge":"hinge-butt-50","hung":"left"}]},{"contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/0/width | Make it (.+?) wide | /bays/0/contents/0/bays/0/width
        plain | {"/bays/0/contents":[{"kind":"divided","bays":[{"contents":[{"kind":"door","height":"140 mm","hinge":"hinge-35-overlay","hung":"left"},{"kind":"open"}]},{"contents":[{"kind":"open"}]}]}]} | /bays/0/contents/0/bays/0/contents/0/height | Make it (.+?) high | /bays/0/contents/0/bays/0/contents/0/height
        """)
    void namesAHeightAWidthOrAHingeOfADoor(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        plain | {"/drawers/grip":{"kind":"notch","width":"360 mm","depth":"20 mm"}} | /drawers/grip/width | notch (\\d+ mm) wide\\. | /drawers/grip/width
        plain | {"/drawers/grip":{"kind":"notch","width":"100 mm","depth":"60 mm"}} | /drawers/grip/depth | notch (\\d+ mm) deep\\. | /drawers/grip/depth
        plain | {"/drawers/hang":{"kind":"runners","bar":{"preset":"bar-20x20","thickness":"9 mm"}}} | /drawers/hang/bar | bar (\\S+ mm) thick or more | /drawers/hang/bar/thickness
        plain | {"/plan/depth":"300 mm","/support":{"kind":"none"},"/drawers/hang/slide":"slide-53-heavy"} | /plan/depth | Make the plan (.+?) deep | /plan/depth
        plain | {"/plan/depth":"180 mm","/bays/0/contents/0/fronts/0":"120 mm","/bays/1/contents/0/front":"120 mm","/support":{"kind":"none"},"/drawers/hang":{"kind":"runners","bar":"bar-20x20"}} | /plan/depth | Make the plan (.+?) deep | /plan/depth
        plain | {"/drawers/grip":{"kind":"notch","width":"400 mm","depth":"20 mm"}} | /drawers/grip/width | notch (\\d+ mm) wide\\. | /drawers/grip/width
        plain | {"/drawers/grip":{"kind":"notch","width":"100 mm","depth":"60 mm"},"/bays/1/contents/0/front":"80 mm"} | /drawers/grip/depth | notch (\\d+ mm) deep\\. | /drawers/grip/depth
        plain | {"/bays/0/contents/0/fronts/0":"120 mm","/bays/1/contents/0/front":"120 mm","/drawers/hang":{"kind":"runners","bar":{"preset":"bar-20x20","width":"10 mm"}}} | /drawers/hang/bar | bar (\\S+ mm) wide or more | /drawers/hang/bar/width
        plain | {"/bays/0/contents/0/fronts/0":"120 mm","/bays/1/contents/0/front":"120 mm","/drawers/hang":{"kind":"runners","bar":{"preset":"bar-20x20","width":"45 mm"}}} | /drawers/hang/bar | bar (\\S+ mm) wide or less | /drawers/hang/bar/width
        plain | {"/bays/0/contents/0/fronts/0":"120 mm","/bays/1/contents/0/front":"120 mm","/drawers/hang":{"kind":"runners","bar":{"preset":"bar-20x20","length":"400 mm"}}} | /drawers/hang/bar | bar (\\S+ mm) long or more | /drawers/hang/bar/length
        plain | {"/bays/1/contents/0/front":"120 mm","/drawers/hang":{"kind":"runners","bar":{"preset":"bar-20x20","width":"60 mm"}},"/screws/panel":{"preset":"screw-4","lengths":[25,70]},"/bays/0/contents":[{"kind":"divided","bays":[{"width":"110 mm","contents":[{"kind":"equal-drawers","count":2}]},{"contents":[{"kind":"equal-drawers","count":2}]}]}]} | /drawers/hang/bar | bar (\\S+ mm) wide or less | /drawers/hang/bar/width
        plain | {"/screws/slide":{"preset":"slide-screw-4","lengths":[14]}} | /screws/slide | screw of (\\S+ mm) or shorter | /screws/slide/lengths/0
        plain | {"/screws/panel":{"preset":"screw-4","lengths":[30]},"/support":{"kind":"none"}} | /screws/panel | screw of (\\S+ mm) or shorter | /screws/panel/lengths/0
        plain | {"/drawers/box":{"preset":"birch-6.5"}} | /drawers/box | sheet of (.+?) or more | /drawers/box/thickness
        """)
    void namesANotchABarAScrewOrASheetOfDrawers(String stand, String changes, String field, String way, String where) {
        NearestValue.check(stand, changes, field, way, where);
    }
}
