package jobfile_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"strake/goods"
	"strake/jobfile"
	"strake/tape"
)

const goodsKeys = `goods:
  base: buy
  shoe: none
  base_sold: [8', 12']
  strip_sold: [72]
  joints_in_doorways: yes
  fit: 1/4
  casing: 0
  roll: {width: 40, length: 100', lap: 6}
  glue: {bead: 3/8, apart: 8, tube: 300}
  tools:
    floor nailer: {have: rent, days: 2, daily: 45}
    jamb saw: {have: buy, price: [30, 50]}
prices:
  currency: USD
  tax: 8.25
  base: 1.35
  underlayment: [28, 36]
`

func TestGoodsKeys(t *testing.T) {
	j, _, err := jobfile.ReadJob("g.yaml", []byte(dryJob+goodsKeys))
	if err != nil {
		t.Fatal(err)
	}
	ft, in := tape.Foot, tape.Inch
	want := goods.Wants{Told: true, Base: goods.Buy, Shoe: goods.NoWay, BaseSold: []tape.Length{8 * ft, 12 * ft}, StripSold: []tape.Length{72 * in}, DoorJoints: true,
		Fit: in / 4, FitTold: true, CasingTold: true, Roll: goods.Roll{Width: 40 * in, Length: 100 * ft, Lap: 6 * in}, Glue: goods.Glue{Bead: 3 * in / 8, Apart: 8 * in, Tube: 300},
		Tools: []goods.Tool{{Name: goods.Nailer, Have: goods.Rent, Days: 2, Daily: goods.Exactly(45)},
			{Name: goods.JambSaw, Have: goods.BuyOne, Price: goods.Money{Told: true, Low: 30, Likely: 40, High: 50}}},
		Prices: goods.Prices{Told: true, Currency: "USD", Tax: 0.0825, TaxTold: true, Of: map[goods.Item]goods.Money{
			goods.BaseItem: goods.Exactly(1.35), goods.SheetItem: {Told: true, Low: 28, Likely: 32, High: 36}}}}
	if !reflect.DeepEqual(j.Goods, want) {
		t.Errorf("read %+v\nwant %+v", j.Goods, want)
	}
}

func TestGoodsErrors(t *testing.T) {
	for from, c := range map[string]struct{ to, what string }{
		"base: buy":                       {"base: new", "is not known here"},
		"[8', 12']":                       {"[8', 200']", "out of range"},
		"roll: {width: 40, length":        {"roll: {width: 11, length", "out of range"},
		"bead: 3/8, apart: 8":             {"bead: 1/2, apart: 1", "out of range"},
		"width: 40, length: 100', lap: 6": {"width: 20, length: 100', lap: 11", "more than half"},
		"casing: 0":                       {"casing: 20", "out of range"},
		"tube: 300":                       {"tube: 3", "this is not such a number"},
		"floor nailer":                    {"floor stapler", "no tool of the list"},
		"have: rent, days":                {"have: own, days", "go with what is rented"},
		"have: buy, price":                {"have: borrow, price", "goes with what is bought"},
		"[30, 50]":                        {"[50, 30]", "no range"},
		"[28, 36]":                        {"[28, 36, 40]", "no range"},
		"currency: USD\n":                 {"\n", "a price without a currency"},
		"underlayment":                    {"underlay", "underlayment"},
		"tax: 8.25":                       {"tax: 825", "this is not such a number"},
		"base: 1.35":                      {"base: -1", "this is not such a number"},
	} {
		_, _, err := jobfile.ReadJob("g.yaml", []byte(dryJob+strings.Replace(goodsKeys, from, c.to, 1)))
		var errs jobfile.Errors
		if !errors.As(err, &errs) || !strings.Contains(err.Error(), c.what) || !strings.Contains(err.Error(), "g.yaml:") {
			t.Errorf("%s for %s: %v", c.to, from, err)
		}
	}
}

// Prices are in one currency: that of the boards stands for all.
func TestOneCurrency(t *testing.T) {
	boards := strings.Replace(dryJob, "face: 5,", "face: 5, currency: EUR,", 1)
	if _, _, err := jobfile.ReadJob("g.yaml", []byte(boards+strings.Replace(goodsKeys, "currency: USD\n", "\n", 1))); err != nil {
		t.Errorf("the currency of the boards stands for all: %v", err)
	}
	if _, _, err := jobfile.ReadJob("g.yaml", []byte(boards+goodsKeys)); err == nil || !strings.Contains(err.Error(), "boards are priced in another currency") {
		t.Errorf("two currencies: %v", err)
	}
	tool := "goods: {tools: {floor nailer: {have: rent, daily: 45}}}\n"
	if _, _, err := jobfile.ReadJob("g.yaml", []byte(dryJob+tool)); err == nil || !strings.Contains(err.Error(), "g.yaml:5:") || !strings.Contains(err.Error(), "a price without a currency") {
		t.Errorf("a rent without a currency: %v", err)
	}
}
