using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Kitwright.Shop.Migrations
{
    /// <inheritdoc />
    public partial class First : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Bookings",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Asked = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    By = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Bookings", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Demo",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    State = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Demo", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Fabrics",
                columns: table => new
                {
                    Number = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    WidthTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    PricePerYard = table.Column<long>(type: "INTEGER", nullable: false),
                    Color = table.Column<string>(type: "TEXT", maxLength: 7, nullable: false),
                    Print = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Second = table.Column<string>(type: "TEXT", maxLength: 7, nullable: false),
                    Seed = table.Column<int>(type: "INTEGER", nullable: false),
                    PutUpTicks = table.Column<long>(type: "INTEGER", nullable: true),
                    Demo = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Fabrics", x => x.Number);
                });

            migrationBuilder.CreateTable(
                name: "Projects",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Slug = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    Demo = table.Column<bool>(type: "INTEGER", nullable: false),
                    Head = table.Column<Guid>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Projects", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Terms",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false),
                    UsableWidthTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    CrossTrimTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    StraighteningTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    Stages = table.Column<int>(type: "INTEGER", nullable: false),
                    IncrementTicks = table.Column<string>(type: "TEXT", nullable: false),
                    MinimumCutTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    SpareStrips = table.Column<int>(type: "INTEGER", nullable: false),
                    OneLengthPerFabric = table.Column<bool>(type: "INTEGER", nullable: false),
                    LoadLossTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    UsefulRemnantTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    PutUpTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    Currency = table.Column<string>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Terms", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Bolts",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Fabric = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Lot = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Demo = table.Column<bool>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Bolts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Bolts_Fabrics_Fabric",
                        column: x => x.Fabric,
                        principalTable: "Fabrics",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Revisions",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Project = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<int>(type: "INTEGER", nullable: false),
                    Base = table.Column<Guid>(type: "TEXT", nullable: true),
                    Shows = table.Column<Guid>(type: "TEXT", nullable: false),
                    Change = table.Column<string>(type: "TEXT", nullable: false),
                    Json = table.Column<string>(type: "TEXT", nullable: false),
                    By = table.Column<string>(type: "TEXT", maxLength: 200, nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Revisions", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Revisions_Projects_Project",
                        column: x => x.Project,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Revisions_Revisions_Base",
                        column: x => x.Base,
                        principalTable: "Revisions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Balances",
                columns: table => new
                {
                    Bolt = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    OnHandTicks = table.Column<long>(type: "INTEGER", nullable: false),
                    Entries = table.Column<int>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Balances", x => x.Bolt);
                    table.CheckConstraint("CK_Balances_OnHand", "\"OnHandTicks\" >= 0");
                    table.ForeignKey(
                        name: "FK_Balances_Bolts_Bolt",
                        column: x => x.Bolt,
                        principalTable: "Bolts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Entries",
                columns: table => new
                {
                    Id = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Booking = table.Column<Guid>(type: "TEXT", nullable: false),
                    Bolt = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Ticks = table.Column<long>(type: "INTEGER", nullable: false),
                    For = table.Column<string>(type: "TEXT", maxLength: 200, nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Entries", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Entries_Bolts_Bolt",
                        column: x => x.Bolt,
                        principalTable: "Bolts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Entries_Bookings_Booking",
                        column: x => x.Booking,
                        principalTable: "Bookings",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.InsertData(
                table: "Demo",
                columns: new[] { "Id", "State" },
                values: new object[] { 1, "Absent" });

            migrationBuilder.CreateIndex(
                name: "IX_Bolts_Fabric",
                table: "Bolts",
                column: "Fabric");

            migrationBuilder.CreateIndex(
                name: "IX_Entries_Bolt_Id",
                table: "Entries",
                columns: new[] { "Bolt", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Entries_Booking",
                table: "Entries",
                column: "Booking");

            migrationBuilder.CreateIndex(
                name: "IX_Projects_Slug",
                table: "Projects",
                column: "Slug",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Revisions_Base",
                table: "Revisions",
                column: "Base");

            migrationBuilder.CreateIndex(
                name: "IX_Revisions_Project_Number",
                table: "Revisions",
                columns: new[] { "Project", "Number" },
                unique: true);

            NeverChanged.Add(migrationBuilder, "Revisions");
            NeverChanged.Add(migrationBuilder, "Bookings");
            NeverChanged.Add(migrationBuilder, "Entries");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Balances");

            migrationBuilder.DropTable(
                name: "Demo");

            migrationBuilder.DropTable(
                name: "Entries");

            migrationBuilder.DropTable(
                name: "Revisions");

            migrationBuilder.DropTable(
                name: "Terms");

            migrationBuilder.DropTable(
                name: "Bolts");

            migrationBuilder.DropTable(
                name: "Bookings");

            migrationBuilder.DropTable(
                name: "Projects");

            migrationBuilder.DropTable(
                name: "Fabrics");
        }
    }
}
