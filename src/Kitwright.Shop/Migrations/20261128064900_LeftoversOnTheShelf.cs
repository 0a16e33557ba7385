using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Kitwright.Shop.Migrations
{
    /// <inheritdoc />
    public partial class LeftoversOnTheShelf : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<long>(
                name: "LeastLeftoverTicks",
                table: "Terms",
                type: "INTEGER",
                nullable: false,
                defaultValue: 20320L);

            migrationBuilder.CreateTable(
                name: "OffcutBalances",
                columns: table => new
                {
                    Fabric = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    WidthTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    HeightTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    OnHand = table.Column<int>(type: "INTEGER", nullable: false),
                    Entries = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OffcutBalances", x => new { x.Fabric, x.WidthTicks, x.HeightTicks });
                    table.CheckConstraint("CK_OffcutBalances_OnHand", "\"OnHand\" >= 0");
                    table.ForeignKey(
                        name: "FK_OffcutBalances_Fabrics_Fabric",
                        column: x => x.Fabric,
                        principalTable: "Fabrics",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "OffcutEntries",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Booking = table.Column<Guid>(type: "TEXT", nullable: false),
                    Fabric = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    WidthTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    HeightTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Change = table.Column<int>(type: "INTEGER", nullable: false),
                    For = table.Column<string>(type: "TEXT", maxLength: 200, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OffcutEntries", x => x.Id);
                    table.ForeignKey(
                        name: "FK_OffcutEntries_Bookings_Booking",
                        column: x => x.Booking,
                        principalTable: "Bookings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_OffcutEntries_OffcutBalances_Fabric_WidthTicks_HeightTicks",
                        columns: x => new { x.Fabric, x.WidthTicks, x.HeightTicks },
                        principalTable: "OffcutBalances",
                        principalColumns: new[] { "Fabric", "WidthTicks", "HeightTicks" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_OffcutEntries_Booking",
                table: "OffcutEntries",
                column: "Booking");

            migrationBuilder.CreateIndex(
                name: "IX_OffcutEntries_Fabric_WidthTicks_HeightTicks_Id",
                table: "OffcutEntries",
                columns: new[] { "Fabric", "WidthTicks", "HeightTicks", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_OffcutEntries_For",
                table: "OffcutEntries",
                column: "For");

            NeverChanged.Add(migrationBuilder, "OffcutEntries");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "OffcutEntries");

            migrationBuilder.DropTable(
                name: "OffcutBalances");

            migrationBuilder.DropColumn(
                name: "LeastLeftoverTicks",
                table: "Terms");
        }
    }
}
